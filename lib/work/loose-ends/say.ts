const mostCharacters = 60;
const numbers = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ');
const weekdays = 'Sunday Monday Tuesday Wednesday Thursday Friday Saturday'.split(' ');
const months = 'January February March April May June July August September October November December'.split(
  ' ',
);

export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "red, white and green" */
export function sayList(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** "three markers", "1400 markers", "one marker". */
export function sayCount(count: number, one: string, many = `${one}s`): string {
  return `${numbers[count] ?? count} ${count === 1 ? one : many}`;
}

/** Free words in quotation marks, on one line, cut where they are long. */
export function quoted(words: string): string {
  const line = [...words.replace(/\s+/g, ' ').trim()];
  const cut = line.length > mostCharacters ? [...line.slice(0, mostCharacters - 1), '…'] : line;
  return `“${cut.join('')}”`;
}

/** "Friday 20 March 2026". @param day by ISO 8601: 2026-03-20 */
export function sayDay(day: string): string {
  const at = new Date(`${day}T00:00Z`);
  return `${weekdays[at.getUTCDay()]} ${at.getUTCDate()} ${months[at.getUTCMonth()]} ${at.getUTCFullYear()}`;
}

const qualities = 'full|basic|quick|new|second|light';
const objects = 'string|fret|fretboard|neck|bridge|nut|pot|jack|switch|tuner|sound|hum|electrics';
const jobsOfWork =
  'set-?up|restring|refret|clean|polish|dress|check|test|repair|service|adjustment|replacement|overhaul';
const countedWork = new RegExp(`^(?:(?:${qualities}) )?(?:(?:${objects}) )?(?:${jobsOfWork})$`, 'i');

/** "a set-up"; work in words of its own is quoted: “Find and mend the crackle”. */
export function sayWork(what: string): string {
  if (!countedWork.test(what)) return quoted(what);
  const plain = what.toLowerCase();
  return `${/^[aeio]/.test(plain) ? 'an' : 'a'} ${plain}`;
}

/** "the neck pickup", for a subject "Neck" as for "neck pickup". */
export function sayPickup(subject: string): string {
  const [first = '', ...more] = subject.trim().split(/\s+/);
  const begin = /^\p{Lu}\p{Ll}+$/u.test(first) ? first.toLowerCase() : first;
  const words = [begin, ...more].join(' ');
  const named = /\b(?:pickup|coil)s?\b/i.test(words) ? words : `${words} pickup`;
  return /^(?:the|my|his|her|their)$/.test(begin) ? named : `the ${named}`;
}
