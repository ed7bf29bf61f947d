import { folded } from './fold';
import { escaped, exactly, notWithin } from './patterns';

const email = /[^\s@<>(),;:"]+@[^\s@<>(),;:"]+\.[^\s@<>(),;:"]+/gu;
const address = /(?:https?:\/\/|www\.)[^\s<>,;]+/gu;
const handle = /(?<![\p{L}\p{N}])@[\p{L}\p{N}_.]{3,}/gu;
const phone = /(?:\+\s?)?(?:\(?\d[\d\s().\-/]*)\d/gu;
const date = /^(?:\d{4}-\d\d-\d\d|\d\d?[./]\d\d?[./]\d{2,4})$/;
const leastDigits = 6;
const leastLetters = 6;
/** What may stand between two digits of a number. */
const gap = '[\\s().\\-/]{0,3}';
/** The bracket that an area code stands in. */
const bracket = '(?:\\((?=\\d{1,5}\\)))?';

export interface WaysToReach {
  /** Anywhere: telephone numbers, e-mail and web addresses, street addresses with a number. */
  everywhere: RegExp[];
  /** In the client's own jobs only: places without a number, such as a house with a name. */
  own: RegExp[];
}

/**
 * What to look for in folded texts, so that the lines which tell how to reach someone are found again, also with
 * their digits grouped in another way.
 * @param reach lines as they were written
 */
export function waysIn(reach: string): WaysToReach {
  const everywhere: RegExp[] = [];
  const own: RegExp[] = [];
  for (const line of reach.split('\n')) {
    const rest = take(everywhere, folded(line));
    const hasNumber = /\d/.test(rest);
    if (!hasNumber && !isAllCapitalised(line)) continue;
    for (const place of placesIn(rest)) (/\d/.test(place) ? everywhere : own).push(exactly(place));
  }
  return { everywhere, own };
}

/** Takes the numbers and addresses out of a line, and leaves the rest of it. */
function take(patterns: RegExp[], line: string): string {
  return line
    .replace(email, (found) => put(patterns, emailPattern(trimmed(found))))
    .replace(address, (found) => put(patterns, exactly(trimmed(found))))
    .replace(handle, (found) => put(patterns, exactly(trimmed(found))))
    .replace(phone, (found) => {
      const digits = found.replace(/\(0\)|\D/g, '');
      const isNone = digits.length < leastDigits || date.test(found.trim());
      return isNone ? found : put(patterns, phonePattern(found.trim(), digits));
    });
}

function put(patterns: RegExp[], pattern: RegExp): string {
  patterns.push(pattern);
  return '\n';
}

const isAllCapitalised = (line: string) => !/(?<![\p{L}'’])\p{Ll}/u.test(line);

const trimmed = (found: string) => found.replace(/[.!?'’]+$/, '');

/** Also as it is said: "ada at example dot org". */
function emailPattern(written: string): RegExp {
  const said = Array.from(written, (letter) => {
    if (letter === '@') return '(?:@|\\s+at\\s+)';
    return letter === '.' ? '(?:\\.|\\s+dot\\s+)' : escaped(letter);
  });
  return notWithin(said.join(''), '[\\p{L}\\p{N}]');
}

/**
 * The digits in any grouping, with or without the country's own. Country codes have one to three digits and the
 * number in its country may begin with a 0 that falls away behind them (ITU-T E.164, E.123).
 */
function phonePattern(written: string, digits: string): RegExp {
  const grouped = (run: string) => Array.from(run).join(gap);
  const country = `(?:\\+|00)${gap}`;
  const zero = `(?:0${gap})?`;
  const international = /^(?:\+|00)/.test(written.replace(/^\(/, ''));
  if (!international) {
    const own = digits.replace(/^0/, '');
    return notWithin(`${bracket}(?:${country}(?:\\d${gap}){1,3}?)?${zero}${grouped(own)}`, '\\d');
  }
  const whole = digits.replace(/^00/, '');
  const ways = [1, 2, 3].flatMap((codeDigits) => {
    const own = whole.slice(codeDigits);
    if (own.length < leastDigits) return [];
    const code = `(?:${country})?${grouped(whole.slice(0, codeDigits))}${gap}`;
    return [`(?:${code})?${zero}${grouped(own)}`];
  });
  if (ways.length === 0) ways.push(grouped(whole));
  return notWithin(`${bracket}(?:${ways.join('|')})`, '\\d');
}

/** The whole line, and each part of it between commas that tells enough to be a place by itself. */
function placesIn(line: string): string[] {
  const parts = [line, ...line.split(/[,;\n]/)]
    .map((part) => part.trim())
    .filter((part) => part.replace(/[^\p{L}\p{N}]/gu, '').length >= leastLetters && /\s/.test(part));
  return [...new Set(parts)];
}
