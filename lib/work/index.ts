export { type ClaimGroup, groupClaims } from './claims';
export { dayOf, dayOfJob } from './days';
export { findableText, folded, wordsOf } from './findable';
export { refuseIfChanged } from './meanwhile';
export { minorDigits, parsePrice, sayPrice } from './money';
export {
  type BenchAddress,
  benchAddress,
  dayInWords,
  type Paper,
  type PrintedList,
  type PrintedText,
  type PrintedTicket,
  type PrintedWork,
  paperOf,
  papers,
  printedTicket,
  qrCode,
} from './print';
export { isOverdue, type RackGroup, type RackGroupName, rackGroups } from './rack';
export { type SerialLayout, sayLayout } from './serial-layout';
export { SerialPatternError } from './serial-piece';
export { parsePattern } from './serial-words';
export { readSerial } from './serials';
