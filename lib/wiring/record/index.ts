export { sameSubject } from './worksheet';
