import {
  COLOURED_THINGS,
  COLOURS,
  JOIN_VERBS,
  ROLE_WORDS,
  ROW_WORDS,
  SHIELD_WORDS,
  TERMINALS,
  WIRE_NOUNS,
} from '../lexicon/conductors';
import { SYMPTOMS, WORK_VERBS } from '../lexicon/marker-cues';
import { GIVEN_NAMES } from '../lexicon/names';
import { SUBJECTS } from '../lexicon/subjects';
import { SERVICES, WORK_PARTS } from '../lexicon/work-cues';

const told = [
  ...[COLOURS, TERMINALS, ROLE_WORDS, ROW_WORDS, WORK_VERBS].flatMap((words) => Object.keys(words)),
  ...[SHIELD_WORDS, WIRE_NOUNS, COLOURED_THINGS, JOIN_VERBS, SYMPTOMS, WORK_PARTS, SERVICES].flatMap(
    (words) => [...words],
  ),
  ...SUBJECTS.map(({ say }) => say),
];

/** Words of the trade: one of them is no name that was misheard, and no street is called by it. */
export const BENCH_WORDS: ReadonlySet<string> = new Set(
  told.flatMap((phrase) => phrase.match(/\p{L}{2,}/gu) ?? []).filter((word) => !GIVEN_NAMES.has(word)),
);
