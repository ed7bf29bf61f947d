export { kindOf, plausibleRange, type ReadingKind, readingKinds } from './kinds';
export { parseQuickEntry, type QuickContext, type QuickEntry, type Understood } from './quick/parse';
export { asSayable, sayNewReading, sayPlace, sayReading, sayValue } from './say';
export { expandedUncertainty } from './uncertainty';
export { convert, DigitsError, toBase, unitOf, units } from './units';
