import type { ReadingDetails } from '@/shared/readings';
import { convert } from '../units';

/** Words that stand for a pickup when nothing else is said. */
const pickupWords = /\b(neck|bridge|middle|front|back|rear|centre|center)\b/i;
/** The article is small; a capital A is a note. */
const article = /(?<!\w)a(?!\w)/g;
const fillers =
  /\b(the|is|at|reads?|reading|shows?|showed|measure[sd]?|was|of|on|total|both coils|whole)\b/gi;
const setUpFillers = /\b(fret|string|height|action|clearance)\b/gi;

const stringPatterns = [
  /(?<![#\w])((?:low|high|top|bottom)[\s-]+[a-g][#b]?)(?!\w)(?:\s+string\b)?/i,
  /(?<![#\w])([a-g][#b]?)\s+string\b/i,
  /(?<![\w.,])(\d{1,2}(?:st|nd|rd|th))\s+string\b/i,
  /\bstring\s+(\d{1,2})(?![\w.,/])/i,
];
/** A note letter alone: a capital, or a small one right before a fret ("e 12th"). The article "a" is none. */
const loneLetter = /(?<![#\w'"])([A-G][#b]?)(?![\w#+-])|(?<![#\w])([b-g])(?=\s+\d{1,2}(?:st|nd|rd|th)\b)/;
const namedFret = /\bfret\s+(\d{1,2})(?![\w.,/])|(?<![\w.,])(\d{1,2})(?:st|nd|rd|th)?\s+fret\b/i;
const ordinal = /(?<![\w.,])(\d{1,2})(?:st|nd|rd|th)\b/gi;
const mostFrets = 40;

export interface FoundDetails {
  details: ReadingDetails;
  rest: string;
}

/**
 * Details of a set-up measurement: which string, which fret, which side.
 * @param lone whether a note letter by itself names a string
 */
export function setUpDetails(line: string, lone: boolean): FoundDetails {
  const side = /\b(bass|treble)\s+side\b/i.exec(line);
  const afterSide = cut(line, side?.[0]);
  const string = findString(afterSide, lone);
  const afterString = cut(afterSide, string?.text);
  const fret = findFret(afterString) ?? (string ? bareFret(afterString) : null);
  return {
    details: {
      ...(string ? { string: string.name } : {}),
      ...(fret ? { fret: fret.number } : {}),
      ...(side ? { side: side[1]?.toLowerCase() === 'bass' ? 'bass' : 'treble' } : {}),
    },
    rest: cut(afterString, fret?.text),
  };
}

function findString(line: string, lone: boolean): { name: string; text: string } | null {
  const match =
    stringPatterns.map((pattern) => pattern.exec(line)).find((found) => found) ??
    (lone ? loneLetter.exec(line) : null);
  const named = match?.[1] ?? match?.[2];
  return match && named ? { name: stringName(named), text: match[0] } : null;
}

/** "low E", "G", "Eb", "3rd". */
function stringName(words: string): string {
  const [, height, note = ''] = /^(?:(low|high|top|bottom)[\s-]+)?(.+)$/i.exec(words) ?? [];
  const letter = /^[a-g]/i.test(note)
    ? note.charAt(0).toUpperCase() + note.slice(1).toLowerCase()
    : note.toLowerCase();
  return height ? `${height.toLowerCase()} ${letter}` : letter;
}

/** Of two bare ordinals ("3rd 12th") neither is taken: which one is the fret is not said. */
function findFret(line: string): { number: number; text: string } | null {
  const named = namedFret.exec(line);
  const ordinals = [...line.matchAll(ordinal)];
  const match = named ?? (ordinals.length === 1 ? ordinals[0] : undefined);
  const number = Number(match?.[1] ?? match?.[2] ?? Number.NaN);
  return match && number <= mostFrets ? { number, text: match[0] } : null;
}

/** "low E 12": beside a string, a number that stands alone is the fret. */
function bareFret(line: string): { number: number; text: string } | null {
  const alone = /^[\s,]*(\d{1,2})[\s,]*$/.exec(line)?.[1];
  return alone !== undefined && Number(alone) <= mostFrets ? { number: Number(alone), text: alone } : null;
}

/** The frequency that a part was tested at, and how warm it was: "4.5 H at 1 kHz", "7.9k at 24 °C". */
export function testDetails(line: string): FoundDetails {
  const hertz = /(?:\bat\b|@|(?<=\s))\s*(\d+(?:[.,]\d+)?)\s*(k?)hz\b/i.exec(line);
  const warmth = /(?:\bat|@)\s*(-?\d+(?:[.,]\d+)?)\s*(?:°|deg(?:rees)?\s*)?([CF])(?!\w)/i.exec(line);
  const celsius =
    warmth && Number(convert(warmth[1] ?? '', /f/i.test(warmth[2] ?? '') ? '°F' : '°C', '°C', 2));
  const isWarmth = celsius !== null && celsius >= -60 && celsius <= 120;
  const hz = hertz && Number(convert(hertz[1] ?? '', hertz[2] ? 'kHz' : 'Hz', 'Hz', 6));
  return {
    details: { ...(hz ? { testFrequencyHz: hz } : {}), ...(isWarmth ? { celsius } : {}) },
    rest: cut(cut(line, hz ? hertz?.[0] : undefined), isWarmth ? warmth?.[0] : undefined),
  };
}

/**
 * What is left of a line, as the subject: "neck" is the neck pickup where pickups are measured.
 * @param asPickup whether "neck" means the pickup there
 */
export function subjectOf(rest: string, asPickup: boolean, isSetUp: boolean): string {
  const plain = (isSetUp ? rest.replace(setUpFillers, ' ') : rest)
    .replace(fillers, ' ')
    .replace(article, ' ')
    .replace(/[\s,;:=()]+/g, ' ')
    .replace(/(?<=^|\s)[-–.](?=\s|$)/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (!asPickup || !pickupWords.test(plain)) return plain;
  return (
    /\b(pickup|coil|pole|ring|cover|plate|saddle|switch|pot|jack|joint|wire|lead)\b/i.test(plain)
      ? plain
      : plain.replace(pickupWords, '$& pickup')
  ).toLowerCase();
}

function cut(line: string, part: string | undefined): string {
  return part === undefined ? line : line.replace(part, ' ');
}
