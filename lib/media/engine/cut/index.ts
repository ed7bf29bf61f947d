export { cutFacts } from './facts';
export { inspectCut } from './inspect';
export { measureLoudness } from './loudness';
export { writeCut } from './write-cut';
