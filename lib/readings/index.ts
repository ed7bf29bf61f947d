export { comparedAt20, copperAt, copperPerCelsius, referenceCelsius, type WarmCoil } from './copper';
export { type Dissipation, dissipationOf, plateDissipation, sayDissipation } from './dissipation';
export { isOfferedFor, kindOf, plausibleRange, type ReadingKind, readingKinds } from './kinds';
export { centsBetween, nearestNote, noteHz, standardHz } from './pitch';
export { plausibilityCaution } from './plausible';
export { parseQuickEntry, type QuickContext, type QuickEntry, type Understood } from './quick/parse';
export { asSayable, sayNewReading, sayPlace, sayReading, sayValue } from './say';
export { sayBase } from './say-base';
export { sayUncertainty } from './say-uncertainty';
export { type UcumValue, ucumValue } from './ucum';
export { combinedExpanded, expandedUncertainty, rectangular } from './uncertainty';
export {
  convert,
  DigitsError,
  fromBase,
  type Quantity,
  stepOf,
  toBase,
  type Unit,
  unitOf,
  units,
} from './units';
