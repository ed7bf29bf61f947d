export { type CautionKey, cautionKeys, cautions } from './cautions';
export { cautionsFor, type JobFacts } from './involved';
