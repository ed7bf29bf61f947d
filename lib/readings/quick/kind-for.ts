import type { ReadingKindId } from '@/shared/readings';
import { isOfferedFor, plausibleRange, type ReadingKind, readingKinds } from '../kinds';
import { centsBetween, nearestNote, noteHz } from '../pitch';
import { type Quantity, toBase, unitOf } from '../units';
import type { QuickContext } from './entry';
import { setUpDetails } from './subject';
import type { FoundValue } from './value';

/** Lengths that are not heights of a string, though a string is named. */
const otherLengths = /\b(gauge|diameter|length|spacing|width|wide|thick(ness)?|long|slot)\b/i;
const electric: readonly Quantity[] = ['resistance', 'voltage', 'current', 'capacitance', 'inductance'];
const partWords =
  /\b(pickup|coil|humbucker|pot|potentiometer|joint|jack|switch|shield|baseplate|base plate|cable|continuity)\b/i;
const pickupPlaces = /\b(neck|bridge|middle)\b/i;
/** The kinds that a unit alone is enough for. */
const byUnit = new Set<ReadingKindId>([
  'resistance',
  'inductance',
  'capacitance',
  'voltage',
  'current',
  'length',
  'pitch',
  'humidity',
  'temperature',
  'mass',
  'intonation',
  'string-tension',
]);

/** A note that is out of tune by more than this is another note. */
const centsInSemitone = 100;

/** The kind of reading that a line holds; null where it cannot be told. */
export function kindFor(
  text: string,
  value: FoundValue | null,
  hasPair: boolean,
  context: QuickContext,
): ReadingKindId | null {
  const quantities = value?.units.map((id) => unitOf(id).quantity) ?? [];
  if (hasPair) return pairKind(quantities);
  const fits = readingKinds.filter(
    (kind) => kind.id !== 'polarity-kick' && isOfferedFor(kind, context.instrumentType),
  );
  const ofQuantity = (kind: ReadingKind) => quantities.includes(unitOf(kind.baseUnit).quantity);
  const named =
    fits.find((kind) => isSaid(text, kind) && (quantities.length === 0 || ofQuantity(kind))) ??
    fits.find((kind) => kind.words?.test(text) && (quantities.length === 0 || ofQuantity(kind)));
  if (named) return named.id;
  if (quantities.length === 0 && value && !value.open && isNote(text, value)) return 'pitch';
  if (quantities.includes('interval') && value && setUpDetails(value.rest, true).details.string)
    return 'intonation';
  const { string, side } = setUpDetails(text, true).details;
  const namesString = (string !== undefined || side !== undefined) && !otherLengths.test(text);
  if (
    namesString &&
    (quantities.includes('length') || (quantities.length === 0 && value !== null && !value.open))
  )
    return 'string-height';
  if (value?.open) return string === undefined ? 'resistance' : null;
  if (quantities.length === 0) return value && isPart(text, context) ? 'resistance' : null;
  // "21 C": without a string, degrees rather than cents.
  const meant = quantities.filter((quantity) => quantity !== 'interval' || quantities.length === 1);
  const byQuantity = meant.flatMap(
    (quantity) =>
      fits.find(({ id, baseUnit }) => byUnit.has(id) && unitOf(baseUnit).quantity === quantity) ?? [],
  );
  return likeliest(byQuantity, value, text, context)?.id ?? null;
}

/** Of the kinds that one typed unit can mean ("1m", "72F"), the one that the part or the size of the value tells. */
function likeliest(
  kinds: readonly ReadingKind[],
  value: FoundValue | null,
  text: string,
  context: QuickContext,
): ReadingKind | undefined {
  const ofPart = isPart(text, context) ? kinds.find(({ id }) => id === 'resistance') : undefined;
  return ofPart ?? kinds.find((kind) => isUsualSize(kind, value, context)) ?? kinds[0];
}

function isUsualSize(kind: ReadingKind, value: FoundValue | null, { instrumentType }: QuickContext): boolean {
  const unit = value?.units.find((id) => unitOf(id).quantity === unitOf(kind.baseUnit).quantity);
  const range = plausibleRange(kind, { subject: '', instrumentType });
  if (!unit || !range || value?.digits == null) return false;
  const base = toBase(value.digits, unit);
  return base >= range.low && base <= range.high;
}

/** "A 440", "E4 329.6": the number is the frequency of the note that stands before it. */
function isNote(text: string, { digits }: FoundValue): boolean {
  const [, letter = '', octave = ''] = /^(?:(?:low|high)\s)?([a-g][#b]?)(\d?)\s/i.exec(text) ?? [];
  const nearest = nearestNote(Number(digits?.replace(',', '.')));
  if (letter === '' || !nearest) return false;
  const name = letter.charAt(0).toUpperCase() + letter.slice(1).toLowerCase();
  const hz = noteHz(`${name}${octave || nearest.note.slice(-1)}`);
  return hz !== null && Math.abs(centsBetween(hz, Number(digits?.replace(',', '.')))) <= centsInSemitone;
}

/** Between two terminals something electric is measured; without a unit it is resistance. */
function pairKind(quantities: readonly Quantity[]): ReadingKindId | null {
  if (quantities.length === 0) return 'resistance';
  const quantity = quantities.find((candidate) => electric.includes(candidate));
  return (
    readingKinds.find(({ id, baseUnit }) => byUnit.has(id) && unitOf(baseUnit).quantity === quantity)?.id ??
    null
  );
}

/** The way a reading is said: "neck pickup, pickup height: 2.4 mm". */
function isSaid(text: string, { label }: ReadingKind): boolean {
  const said = label.toLowerCase();
  const line = text.toLowerCase();
  return [`${said}:`, `${said}, `].some((words) => line.startsWith(words) || line.includes(`, ${words}`));
}

function isPart(text: string, context: QuickContext): boolean {
  return (
    partWords.test(text) ||
    (carriesPickups(context) && pickupPlaces.test(text)) ||
    context.instrumentType === 'loose pickup'
  );
}

/** Whether "neck" means the neck pickup on such an instrument. */
export function carriesPickups({ instrumentType }: QuickContext): boolean {
  return !/amplifier|pedal|violin/.test(instrumentType);
}
