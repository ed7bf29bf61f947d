export { analyseTrace } from './analyse';
export { limits as pairLimits } from './facts';
export { nextMeasurement } from './next';
export { prepareTrace } from './prepare';
export { TraceProblem } from './problems';
export { sayOhms } from './say';
export { takeOver } from './take-over';
export { expandedOhms, typicalMeter, typicalMeterText } from './uncertainty';
