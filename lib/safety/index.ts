export { type CautionKey, cautionKeys, cautions, cautionsFor, type JobFacts, touchableVolts } from './cautions';
