export { type CautionKey, cautionKeys, cautions } from './cautions';
export { cautionsFor, type JobFacts, touchableVolts } from './involved';
