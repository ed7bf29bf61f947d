export { expectedAtJack } from './expected';
export { faultTable } from './fault-table';
export { judgeAtJack } from './judge';
export { type Resistor, solve } from './network';
export { placesOf } from './places';
export { prepareHarness } from './prepare';
export { HarnessProblem } from './problems';
