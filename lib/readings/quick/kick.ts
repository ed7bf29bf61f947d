import type { NewReading, ReadingDetails } from '@/shared/readings';
import type { QuickContext, QuickEntry, Understood } from './entry';
import { subjectOf } from './subject';
import { type FoundTerminals, findPair, terminal } from './terminals';
import { findValue } from './value';

const laidOn = /\b(touch(?:ed|es|ing)?|lay|laid(?: on)?|steel on|put on)\b/i;
const takenOff = /\b(lift(?:ed|s|ing)?|taken(?: off)?|take off|off|pull(?:ed)?(?: off)?|remove[ds]?)\b/i;
const kickWords = /\b(?:kick(?:ed|s)?|steel)\b/i;
const positive = /(?<!\w)(?:\+|plus|positive|up)(?!\w)/i;
const negative = /(?<!\w)(?:-|minus|negative|down)(?!\w)/i;
const row = /\b(slug|screw|upper|lower)s?\b(?:\s+row\b)?/i;
const size = /\b(?:(small|weak)|(large|big|strong))\b/i;
const saidLeads = /\bred lead on (.+?),? (?:and )?black lead on (.+?)(?=[:,]|$)/i;

/** A line about a kick of the needle; null where it is none. */
export function readKick(text: string, context: QuickContext): QuickEntry | null {
  if (!kickWords.test(text) && !laidOn.test(text) && !/\blift(?:ed|s|ing)?\b/i.test(text)) return null;
  const leads = findLeads(text, context);
  // "Steel string 12th 1.8 mm": a value without leads is no kick.
  const value = findValue(text);
  if (!leads && value.found === 'one' && value.value.units.length > 0) return null;
  const heard = hear(leads?.rest ?? text);
  const subject = subjectOf(heard.rest, true, false) || context.lastSubject || '';
  const understood: Understood[] = [
    ...(leads
      ? [{ text: leads.text, as: `red lead on ${leads.pair[0]}, black lead on ${leads.pair[1]}` }]
      : []),
    ...(heard.row ? [{ text: heard.row, as: `${heard.row} row` }] : []),
    ...(heard.steel ? [{ text: heard.steel, as: `steel ${heard.steel}` }] : []),
    ...(heard.sign
      ? [{ text: heard.sign === 1 ? '+' : '−', as: heard.sign === 1 ? 'positive' : 'negative' }]
      : []),
    ...(subject ? [{ text: subject, as: 'subject' }] : []),
  ];
  const { sign } = heard;
  if (!leads)
    return {
      state: 'unfinished',
      understood,
      missing: 'Which conductors are the red and the black lead on? For example “slug + red/white touch”.',
    };
  if (leads.pair[0] === leads.pair[1])
    return { state: 'unfinished', understood, missing: 'The two leads are on two different conductors.' };
  if (!heard.row) return { state: 'unfinished', understood, missing: 'Which row of poles: slug or screw?' };
  if (!sign) return { state: 'unfinished', understood, missing: 'Which way did it go: + or −?' };
  const reading = (steel: 'laid on' | 'taken off'): NewReading => {
    const details: ReadingDetails = {
      leads: { red: leads.pair[0], black: leads.pair[1] },
      steel,
      row: heard.row,
      sign,
      ...(heard.size ? { size: heard.size } : {}),
    };
    return { kind: 'polarity-kick', subject, details };
  };
  if (heard.steel) return { state: 'understood', understood, reading: reading(heard.steel) };
  const choices = (['laid on', 'taken off'] as const).map((steel) => ({
    label: `steel ${steel}`,
    reading: reading(steel),
  }));
  return { state: 'question', understood, question: 'Was the steel laid on or taken off?', choices };
}

function findLeads(text: string, { conductors = [] }: QuickContext): FoundTerminals | null {
  const said = saidLeads.exec(text);
  const red = said && terminal(said[1] ?? '', conductors);
  const black = said && terminal(said[2] ?? '', conductors);
  return said && red && black
    ? { pair: [red, black], text: said[0], rest: text.replace(said[0], ' ') }
    : findPair(text, conductors);
}

/** Row, steel, size and sign; what is said both ways is not heard at all. */
function hear(line: string) {
  const found = row.exec(line);
  const [on, off] = [laidOn.test(line), takenOff.test(line)];
  const [up, down] = [positive.test(line), negative.test(line)];
  const sized = size.exec(line);
  const rest = [row, laidOn, takenOff, kickWords, positive, negative, size, kickWords].reduce(
    (left, pattern) => left.replace(pattern, ' '),
    line,
  );
  return {
    row: found?.[1]?.toLowerCase(),
    steel: on === off ? null : on ? ('laid on' as const) : ('taken off' as const),
    sign: up === down ? null : up ? (1 as const) : (-1 as const),
    size: sized ? (sized[1] ? ('small' as const) : ('large' as const)) : undefined,
    rest,
  };
}
