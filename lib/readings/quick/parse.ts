import type { NewReading, ReadingDetails, ReadingKindId, UnitId } from '@/shared/readings';
import { kindOf } from '../kinds';
import { unitOf } from '../units';
import { askUnit, askWhich, checkPlausible } from './ask';
import type { QuickContext, QuickEntry, Understood } from './entry';
import { readKick } from './kick';
import { carriesPickups, kindFor } from './kind-for';
import { plainLine } from './plain-line';
import { setUpDetails, subjectOf, testDetails } from './subject';
import {
  type FoundTerminals,
  findPair,
  hasThreeColours,
  loneConductor,
  strangerBesideColour,
} from './terminals';
import { type FoundValue, findValue, type ValueSearch } from './value';

export type { QuickContext, QuickEntry, Understood } from './entry';

const example =
  'For example “neck red-white 4.08k”, “bridge total 8.8k”, “red-green open”, “low E 12th 1.8 mm”.';
const longestSubject = 120;
/** More values than these in a line are no reading that can be asked about. */
const mostChoices = 4;
/** Kinds whose words name the part that was measured, not the kind: "battery", "tone cap". */
const namedByPart = new Set<ReadingKindId>(['resistance', 'capacitance', 'inductance', 'voltage', 'current']);
const neverOhms = /^(relief|humidity|intonation|temperature|action)$/i;

/**
 * Reads one typed line as a reading, as it is being typed. What it does not know it asks; it never guesses in
 * silence.
 */
export function parseQuickEntry(line: string, context: QuickContext): QuickEntry {
  const text = plainLine(line);
  if (text === '') return { state: 'empty' };
  const entry = readKick(text, context) ?? readValue(text, context);
  const readings =
    entry.state === 'understood'
      ? [entry.reading]
      : entry.state === 'question'
        ? entry.choices.map(({ reading }) => reading)
        : [];
  if (readings.every(({ subject = '' }) => subject.length <= longestSubject)) return entry;
  return {
    state: 'unfinished',
    understood: [],
    missing: `The line holds too many words: keep what was measured under ${longestSubject} characters.`,
  };
}

/** The line without its terminals and test conditions, and what was found in it. */
interface Parts {
  text: string;
  pair: FoundTerminals | null;
  tested: ReadingDetails;
  /** Where there is no value: what is left of the line. */
  body: string;
}

function readValue(text: string, context: QuickContext): QuickEntry {
  const pair = findPair(text, context.conductors ?? []);
  const body = pair ? pair.rest : text;
  const test = testDetails(body);
  const tested = findValue(test.rest);
  const isTest = Object.keys(test.details).length > 0 && isElectric(tested);
  const search = isTest ? tested : findValue(body);
  const parts: Parts = { text, pair, tested: isTest ? test.details : {}, body };
  const heard = (value: FoundValue | null) => hear(value, parts, context);
  const unfinished = (missing: string): QuickEntry => ({
    state: 'unfinished',
    understood: heard(null).understood,
    missing,
  });
  if (pair && pair.pair[0] === pair.pair[1])
    return unfinished('A reading lies between two different conductors.');
  if (pair ? pair.crowded : hasThreeColours(text))
    return unfinished(
      'Which two conductors? Write a two-colour one as its letter code, such as WHRD, or name it on the Trace page first.',
    );
  if (search.found === 'none') return unfinished(`What did the meter show? ${example}`);
  if (search.found === 'unclear') return unfinished(search.missing);
  if (search.found === 'several') {
    const readings = search.values.flatMap((value) => heard(value).reading ?? []);
    return readings.length > 0 && readings.length <= mostChoices
      ? askWhich('More than one value stands in the line. Which was read?', readings, heard(null).understood)
      : unfinished('One value a line.');
  }
  return answer(search.value, parts, context);
}

function answer(value: FoundValue, parts: Parts, context: QuickContext): QuickEntry {
  const { kind, reading, understood } = hear(value, parts, context);
  if (!kind || !reading) return { state: 'unfinished', understood, missing: `Which unit? ${example}` };
  const stranger = parts.pair === null && kind === 'resistance' ? strangerBesideColour(parts.text) : null;
  if (stranger !== null)
    return askWhich(
      `“${stranger}” is no conductor colour. Note it without the two ends?`,
      [reading],
      understood,
    );
  const end = parts.pair === null && kind === 'resistance' ? loneConductor(reading.subject ?? '') : null;
  if (end !== null)
    return askWhich(
      `A resistance lies between two ends. “${end}” is one: note it without the other?`,
      [reading],
      understood,
    );
  if (kind === 'resistance' && neverOhms.test(reading.subject ?? ''))
    return {
      state: 'unfinished',
      understood,
      missing: `“${reading.subject}” is not measured in ohms. ${example}`,
    };
  if (reading.unit === undefined) return askUnit(reading, understood, context);
  const other = value.other ? hear({ ...value, ...value.other }, parts, context).reading : null;
  if (other) return askWhich('Which was it?', [reading, other], understood);
  if (value.unsure)
    return askWhich('Mega or milli? Write thousandths of an ohm as a decimal of Ω.', [reading], understood);
  return checkPlausible(reading, understood, context);
}

interface Heard {
  kind: ReadingKindId | null;
  /** Without a unit where none was typed and none is certain. */
  reading: NewReading | null;
  understood: Understood[];
}

function hear(value: FoundValue | null, { text, pair, tested, body }: Parts, context: QuickContext): Heard {
  const kind = kindFor(text, value, pair !== null, context);
  const isSetUp =
    kind !== null &&
    ['length', 'interval'].includes(unitOf(kindOf(kind).baseUnit).quantity) &&
    kind !== 'length';
  const left = value ? value.rest : body;
  const { details: placed, rest } = isSetUp ? setUpDetails(left, true) : { details: {}, rest: left };
  const details = { ...placed, ...tested };
  const subject = subjectFor(rest, kind, isSetUp, context);
  const unit = kind && value ? unitFor(kind, value) : null;
  const understood = chips(pair, value, unit, kind, details, subject);
  if (!kind || !value) return { kind, reading: null, understood };
  const shown = value.open
    ? { open: true, unit: unit ?? kindOf(kind).units[0] }
    : { value: value.digits ?? '', ...(unit ? { unit } : {}) };
  return { kind, reading: { kind, ...shown, subject, between: pair?.pair ?? null, details }, understood };
}

/** The unit that the typed word means for this kind; null where none was typed and none is certain. */
function unitFor(kind: ReadingKindId, value: FoundValue): UnitId | null {
  const { quantity } = unitOf(kindOf(kind).baseUnit);
  const meant = value.units.find((id) => unitOf(id).quantity === quantity);
  if (meant) return meant;
  // A note and a number in tune with it leave no doubt.
  if (kind === 'pitch') return 'Hz';
  const [only, ...others] = kindOf(kind).units;
  return only !== undefined && others.length === 0 ? only : null;
}

function subjectFor(
  rest: string,
  kind: ReadingKindId | null,
  isSetUp: boolean,
  context: QuickContext,
): string {
  const { label, words } = kind ? kindOf(kind) : { label: '', words: undefined };
  const said = new RegExp(`(^|, )${label}(?=[,:])`, 'i');
  const named = kind && said.test(rest.trim()) ? rest.trim().replace(said, ' ') : rest;
  const asPickup =
    carriesPickups(context) && (kind === 'resistance' || kind === 'inductance' || kind === null);
  const subject = subjectOf(
    words && !(kind && namedByPart.has(kind)) ? named.replace(words, ' ') : named,
    asPickup,
    isSetUp,
  );
  const own = subject.toLowerCase() === label.toLowerCase() ? '' : subject;
  return own || (kind === 'resistance' ? (context.lastSubject ?? '') : '');
}

function chips(
  pair: FoundTerminals | null,
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
    ...(details.testFrequencyHz === undefined
      ? []
      : [{ text: '', as: `tested at ${details.testFrequencyHz} Hz` }]),
    ...(details.celsius === undefined ? [] : [{ text: '', as: `at ${details.celsius} °C` }]),
    ...(value
      ? [{ text: value.text, as: value.open ? 'open' : `${value.digits}${unit ? ` ${unit}` : ''}` }]
      : []),
    ...(kind && value ? [{ text: '', as: kindOf(kind).label.toLowerCase() }] : []),
  ];
}

/** Test conditions go with a value that is measured under them. */
function isElectric(search: ValueSearch): boolean {
  if (search.found !== 'one') return false;
  return search.value.units.some((id) =>
    ['resistance', 'inductance', 'capacitance'].includes(unitOf(id).quantity),
  );
}
