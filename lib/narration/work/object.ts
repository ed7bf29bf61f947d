import { STOP, type Token, type TokenSpan } from '../words/token';

/** Words at which the thing that is asked for ends. */
const ENDS = new Set([
  'because',
  'cos',
  'so',
  'but',
  'which',
  'when',
  'since',
  'before',
  'after',
  'who',
  'where',
  'then',
  'until',
  'though',
  'although',
  'i',
  "i'll",
  "i'm",
  "i've",
  "i'd",
  'he',
  'she',
  'they',
  'we',
  "he's",
  "she's",
  "they're",
  "it's",
  "that's",
  "there's",
  'while',
  'whilst',
  'today',
  'tomorrow',
  'tonight',
  'anyway',
  'really',
  'obviously',
  'please',
  'um',
  'yeah',
  'okay',
  'right',
  'now',
  'gratis',
  'basically',
  'instead',
  'apparently',
]);
const DETERMINERS = new Set([
  'a',
  'an',
  'the',
  'some',
  'new',
  'that',
  'those',
  'this',
  'his',
  'her',
  'its',
  'their',
  'to',
  'get',
  'have',
  'fresh',
  'my',
  'fit',
  'replace',
  'clean',
  'fix',
  'sort',
  'also',
  'possibly',
  'maybe',
  'perhaps',
  'put',
  'do',
  'give',
  'track',
  'check',
  'change',
  'full',
  'another',
  'two',
  'make',
  'level',
  'polish',
  'restring',
  'see',
]);
const LEADING = new Set([
  'out',
  'too',
  'as',
  'well',
  'me',
  'to',
  'have',
  'get',
  'a',
  'an',
  'the',
  'some',
  'it',
  'his',
  'her',
  'its',
  'their',
  'do',
  'doing',
  'give',
  'put',
  'in',
  'him',
  'them',
  'if',
  'possible',
  'also',
  'and',
  'for',
  'us',
  'with',
  'just',
  'look',
  'at',
  'that',
  'this',
  'those',
  'of',
  'on',
  'could',
  'can',
  'would',
  'i',
  'is',
  'all',
  'of',
  'possibly',
  'maybe',
  'both',
  'then',
  "'s",
  'up',
  'my',
  'was',
  'be',
  'go',
  'client',
  'these',
  'see',
  'any',
  'sort',
]);
/** "by Saturday", "back tomorrow": when, not what. */
const DEADLINE = new Set([
  'by',
  'for',
  'before',
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
  'next',
  'urgently',
  'asap',
  'quick',
  'quickly',
]);
const LONGEST = 11;

/** The words that carry meaning, cut to the beginning so that "glue" and "glued" agree. */
export function stemsOf(words: readonly string[]): string[] {
  return words.filter((word) => word.length > 2 && !EMPTY.has(word)).map(stem);
}

const stem = (word: string): string =>
  /^restr(?:ing|ung)/.test(word)
    ? 'strin'
    : word === 'setup'
      ? 'set'
      : word
          .replace(/(?:ing|ed|es|s)$/, '')
          .replace(/e$/, '')
          .slice(0, 5);

const EMPTY = new Set([
  ...LEADING,
  'are',
  'was',
  'were',
  'still',
  'yet',
  'new',
  'old',
  'one',
  'ones',
  'set',
  'again',
  'bit',
  'little',
  'thing',
  'there',
  'here',
  'not',
  'now',
  'nice',
  'proper',
  'properly',
  'good',
  'back',
  'down',
  'out',
  'off',
  'over',
  'free',
  'nothing',
  'charge',
  'pair',
  'couple',
  'done',
  'fix',
  'fixed',
  'sorted',
  'sort',
  'fitted',
  'fitting',
  'well',
  'time',
  'make',
  'need',
  'needs',
  'and',
  'but',
  'actually',
  'finished',
  'want',
  'got',
  'out',
  'what',
  'find',
  'going',
  'replaced',
  'replace',
  'put',
  'them',
  'other',
  'same',
  'next',
  'got',
  'too',
  'ran',
  'say',
  'tell',
]);
const KEPT_SHORT: Readonly<Record<string, string>> = { going: 'going', setup: 'set' };

/** Stems for comparing two descriptions: weak words such as "going" count when nothing else is left. */
export function keyStems(words: readonly string[]): string[] {
  const strong = stemsOf(words);
  const setUp = words.some(
    (word, at) => (word === 'set' && words[at + 1] === 'up') || word === 'setup' || word === 'setups',
  );
  const all = setUp ? [...strong, 'set-up'] : strong;
  return all.length > 0 ? all : words.filter((word) => KEPT_SHORT[word] !== undefined || word === 'fix');
}

function endsAt(tokens: readonly Token[], at: number): boolean {
  const word = tokens[at]?.word ?? '';
  const next = tokens[at + 1]?.word ?? '';
  if (word === 'if') return next !== 'possible';
  if (word === 'for')
    return [
      'free',
      'nothing',
      'him',
      'her',
      'them',
      'client',
      'saturday',
      'the',
      'about',
      'me',
      'as',
      'next',
      'another',
    ].includes(next);
  if (word === 'as') return true;
  if (word === 'on') return next === 'the' && tokens[at + 2]?.word === 'house';
  if (word === 'no' || word === 'at') return ['charge', 'extra', 'no', 'least'].includes(next);
  if (word === 'and')
    return (
      !DETERMINERS.has(next) &&
      !(next === 'if' && tokens[at + 2]?.word === 'possible') &&
      next !== 'crown' &&
      next.length < 4
    );
  return ENDS.has(word);
}

const startsNext = (tokens: readonly Token[], at: number): boolean => {
  const word = tokens[at]?.word ?? '';
  const start = word === 'and' || word === 'plus' ? at + 1 : at;
  const possible = tokens[start]?.word === 'if' ? start + 2 : start;
  return DETERMINERS.has(tokens[possible]?.word ?? '');
};

/** Cuts what follows a cue into the things named: "a set-up and a new saddle" is two. */
export function objectsAfter(tokens: readonly Token[], from: number): TokenSpan[] {
  const spans: TokenSpan[] = [];
  let start = from;
  let at = from;
  while (at < tokens.length && at - start < LONGEST && !endsAt(tokens, at)) {
    const stop = tokens[at]?.stop ?? STOP.full;
    const next = tokens[at + 1]?.word ?? '';
    const split = at > start && next === 'and' && startsNext(tokens, at + 1);
    const listed =
      stop === STOP.soft &&
      startsNext(tokens, at + 1) &&
      next !== 'that' &&
      next !== 'this' &&
      (next === 'and' || at > start);
    at++;
    if (split || (listed && stop === STOP.soft)) {
      spans.push({ from: start, to: at });
      start = at;
      if (tokens[at]?.word === 'and') at++;
    } else if (stop >= STOP.clause || (stop === STOP.soft && hasComma(tokens, at))) break;
  }
  return [...spans, { from: start, to: at }].filter(
    (span) => contentOf(tokens, span).length > 0 && !isDeadline(tokens, span),
  );
}

/** A soft stop within a line is a comma; one at its end is only the end of a line. */
const hasComma = (tokens: readonly Token[], at: number): boolean => tokens[at]?.line === tokens[at - 1]?.line;

const wordsOf = (tokens: readonly Token[], span: TokenSpan): string[] =>
  tokens.slice(span.from, span.to).map((token) => token.word);

export function contentOf(tokens: readonly Token[], span: TokenSpan): string[] {
  return keyStems(wordsOf(tokens, span));
}

function isDeadline(tokens: readonly Token[], span: TokenSpan): boolean {
  const words = wordsOf(tokens, span).filter((word) => !['it', 'this', 'them', 'one'].includes(word));
  const first = words[0] === 'back' ? words[1] : words[0];
  return first === undefined || DEADLINE.has(first);
}

const isSetUp = (words: readonly Token[], to: number): boolean =>
  words[to - 1]?.word === 'up' && words[to - 2]?.word === 'set';

/** A short description from the words: without articles in front, names or trailing small words. */
export function describe(tokens: readonly Token[], span: TokenSpan): string {
  const words = tokens.slice(span.from, span.to).filter((token) => token.word !== 'client');
  let from = 0;
  const leads = (word: string) =>
    LEADING.has(word) || ['free', 'will', 'would', 'can', 'could'].includes(word);
  while (from < words.length - 1 && leads(words[from]?.word ?? '')) from++;
  let to = words.length;
  while (
    to > from + 1 &&
    !isSetUp(words, to) &&
    (LEADING.has(words[to - 1]?.word ?? '') || ENDS.has(words[to - 1]?.word ?? ''))
  )
    to--;
  return words
    .slice(from, to)
    .map((token) => token.text)
    .join(' ')
    .replace(/ 's\b/g, "'s")
    .replace(/\b(set|fall|pick|line) up\b/gi, '$1-up')
    .slice(0, 120);
}
