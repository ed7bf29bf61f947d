import type { NewReading, ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';
import { kindOf, plausibleRange, readingKinds } from '../kinds';
import { sayNewReading, sayValue } from '../say';
import { toBase, unitOf } from '../units';
import { kickDetails, setUpDetails, subjectOf } from './subject';
import { findPair } from './terminals';
import { findValue, type FoundValue } from './value';

/** What the line is read against. */
export interface QuickContext {
  instrumentType: string;
  /** Conductors known from the job's traces: two-colour names are told from pairs by them. */
  conductors?: readonly string[];
  /** What readings were of last: a line without a subject is of that. */
  lastSubject?: string;
}

/** One part of the line and what it was taken for. */
export interface Understood {
  text: string;
  as: string;
}

export type QuickEntry =
  | { state: 'empty' }
  /** Not enough yet: `missing` says what, with an example. */
  | { state: 'unfinished'; understood: Understood[]; missing: string }
  | { state: 'question'; understood: Understood[]; question: string; choices: { label: string; reading: NewReading }[] }
  | { state: 'understood'; understood: Understood[]; reading: NewReading };

const example = 'For example “neck red-white 4.08k”, “bridge total 8.8k”, “red-green open”, “low E 12th 1.8 mm”.';
/** Steps between units that are easily left out or put in: 8 Ω for 8 kΩ. */
const neighbours: Readonly<Partial<Record<UnitId, readonly UnitId[]>>> = {
  Ω: ['kΩ'],
  kΩ: ['Ω', 'MΩ'],
  MΩ: ['kΩ'],
  mV: ['V'],
  V: ['mV'],
  mA: ['µA', 'A'],
  A: ['mA'],
  µF: ['nF', 'pF'],
  nF: ['µF', 'pF'],
  pF: ['nF'],
  mH: ['H'],
  H: ['mH'],
  mm: ['in', 'thou'],
  in: ['thou', 'mm'],
  thou: ['mm'],
};

/**
 * Reads one typed line as a reading, as it is being typed. What it does not know it asks; it never guesses in
 * silence.
 */
export function parseQuickEntry(line: string, context: QuickContext): QuickEntry {
  const text = line.replace(/\s+/g, ' ').trim();
  if (text === '') return { state: 'empty' };
  return readKick(text, context) ?? readValue(text, context);
}

function readKick(text: string, context: QuickContext): QuickEntry | null {
  if (!/\b(touch|touched|kick|kicked|lift|lifted|laid|lay|steel)\b/i.test(text)) return null;
  const found = findPair(text, context.conductors ?? []);
  const { row, steel, size, sign } = kickDetails(found ? found.rest : text);
  const subject = subjectOf(found ? found.rest : text, true, isElectric(context)) || context.lastSubject || '';
  const understood: Understood[] = [
    ...(found ? [{ text: found.text, as: `red lead on ${found.pair[0]}, black lead on ${found.pair[1]}` }] : []),
    ...(row ? [{ text: row, as: `${row} row` }] : []),
    { text: steel === 'laid on' ? 'touch' : 'lift', as: `steel ${steel}` },
    ...(sign ? [{ text: sign === 1 ? '+' : '−', as: sign === 1 ? 'positive' : 'negative' }] : []),
    ...(subject ? [{ text: subject, as: 'subject' }] : []),
  ];
  if (!found) return { state: 'unfinished', understood, missing: 'Which conductors are the red and the black lead on? For example “slug + red/white touch”.' };
  if (!row) return { state: 'unfinished', understood, missing: 'Which row of poles: slug or screw?' };
  if (!sign) return { state: 'unfinished', understood, missing: 'Which way did it go: + or −?' };
  const details: ReadingDetails = { leads: { red: found.pair[0], black: found.pair[1] }, steel, row, sign, ...(size ? { size } : {}) };
  return { state: 'understood', understood, reading: { kind: 'polarity-kick', subject, details } };
}

function readValue(text: string, context: QuickContext): QuickEntry {
  const pair = findPair(text, context.conductors ?? []);
  const value = findValue(pair ? pair.rest : text);
  const afterValue = value ? value.rest : pair ? pair.rest : text;
  const kind = kindFor(text, value, pair !== null, context);
  const isSetUp = kind !== null && unitOf(kindOf(kind).baseUnit).quantity === 'length';
  const { details, rest } = isSetUp || kind === 'intonation' ? setUpDetails(afterValue) : { details: {}, rest: afterValue };
  const subject = subjectFor(rest, kind, context);
  const unit = kind && value ? unitFor(kind, value) : null;
  const understood = chips(pair, value, unit, kind, details, subject);
  if (!value) return { state: 'unfinished', understood, missing: `What did the meter show? ${example}` };
  if (!kind || (!unit && !value.open)) return { state: 'unfinished', understood, missing: `Which unit? ${example}` };
  const reading: NewReading = {
    kind,
    ...(value.open ? { open: true } : { value: value.digits ?? '' }),
    unit: unit ?? kindOf(kind).units[0] ?? kindOf(kind).baseUnit,
    subject,
    between: pair?.pair ?? null,
    details,
  };
  return checkPlausible(reading, understood);
}

/** Outside its range a value is asked about, with the units that would bring it inside. */
function checkPlausible(reading: NewReading, understood: Understood[]): QuickEntry {
  const { value, unit, subject = '' } = reading;
  const range = plausibleRange(kindOf(reading.kind), subject);
  if (value === undefined || unit === undefined || !range) return { state: 'understood', understood, reading };
  const digits = String(value);
  const inside = (id: UnitId) => toBase(digits, id) >= range.low && toBase(digits, id) <= range.high;
  if (inside(unit)) return { state: 'understood', understood, reading };
  const better = (neighbours[unit] ?? []).filter(inside).map((id) => ({ ...reading, unit: id }));
  const what = subject || kindOf(reading.kind).label.toLowerCase();
  return {
    state: 'question',
    understood,
    question: `${sayValue(reading)} is outside what is usual for ${what}. Which was it?`,
    choices: [...better, reading].map((choice) => ({ label: sayNewReading(choice), reading: choice })),
  };
}

function kindFor(text: string, value: FoundValue | null, hasPair: boolean, { instrumentType }: QuickContext): ReadingKindId | null {
  const fits = readingKinds.filter((kind) => kind.id !== 'polarity-kick' && (!kind.appliesTo || kind.appliesTo.includes(instrumentType)));
  const quantities = value?.units.map((id) => unitOf(id).quantity) ?? [];
  const named = fits.filter((kind) => kind.words?.test(text));
  const ofQuantity = (kind: (typeof fits)[number]) => quantities.includes(unitOf(kind.baseUnit).quantity);
  const byName = named.find((kind) => quantities.length === 0 || ofQuantity(kind));
  if (byName) return byName.id;
  if (value?.open || (hasPair && quantities.length === 0)) return 'resistance';
  const general = fits.filter((kind) => !kind.words || kind.id === 'pitch' || kind.id === 'humidity' || kind.id === 'temperature' || kind.id === 'mass');
  if (quantities.includes('length') && setUpDetails(text).details.side) return 'string-height';
  return general.find(ofQuantity)?.id ?? fits.find(ofQuantity)?.id ?? null;
}

/** The unit that the typed word means for this kind; null where none was typed and none is certain. */
function unitFor(kind: ReadingKindId, value: FoundValue): UnitId | null {
  const { quantity } = unitOf(kindOf(kind).baseUnit);
  const meant = value.units.find((id) => unitOf(id).quantity === quantity);
  if (meant) return meant;
  const { units } = kindOf(kind);
  return units.length === 1 ? (units[0] ?? null) : null;
}

function subjectFor(rest: string, kind: ReadingKindId | null, context: QuickContext): string {
  const words = kind ? rest.replace(kindOf(kind).words ?? /$^/, ' ') : rest;
  const subject = subjectOf(words, false, isElectric(context) && (kind === 'resistance' || kind === 'inductance' || kind === null));
  return subject || (kind === 'resistance' ? (context.lastSubject ?? '') : '');
}

function chips(
  pair: ReturnType<typeof findPair>,
  value: FoundValue | null,
  unit: UnitId | null,
  kind: ReadingKindId | null,
  details: ReadingDetails,
  subject: string,
): Understood[] {
  return [
    ...(subject ? [{ text: subject, as: 'subject' }] : []),
    ...(pair ? [{ text: pair.text, as: `between ${pair.pair[0]} and ${pair.pair[1]}` }] : []),
    ...(details.string ? [{ text: details.string, as: `${details.string} string` }] : []),
    ...(details.fret === undefined ? [] : [{ text: String(details.fret), as: `fret ${details.fret}` }]),
    ...(details.side ? [{ text: details.side, as: `${details.side} side` }] : []),
    ...(value ? [{ text: value.text, as: value.open ? 'open' : `${value.digits}${unit ? ` ${unit}` : ''}` }] : []),
    ...(kind && value ? [{ text: '', as: kindOf(kind).label.toLowerCase() }] : []),
  ];
}

function isElectric({ instrumentType }: QuickContext): boolean {
  return !/amplifier|pedal/.test(instrumentType);
}
