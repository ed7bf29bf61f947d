export { sameSubject, traceOf, type Worksheet } from './worksheet';
