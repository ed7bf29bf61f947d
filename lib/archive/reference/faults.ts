import type { FilmMoment } from '@/shared/moments';
import type { Fault, PlaceFound, ReferenceJob } from '@/shared/reference';
import type { OwnSynonym } from '../lexicon/trade';
import {
  calledAs,
  goTogether,
  isCure,
  isFault,
  shareTrouble,
  tradeWordsOf,
  type WordSaid,
} from './trouble-words';

/** A text of the record with its moment. */
export interface Told {
  text: string;
  moment: FilmMoment | null;
}

/** What a job tells of faults: what it came with and what was found; the work that was done. */
export interface FaultJob {
  job: ReferenceJob;
  found: readonly Told[];
  done: readonly Told[];
  hasResult: boolean;
}

/** How many are named of each. */
export interface Bounds {
  moments: number;
  cures: number;
}

/** A word in a job: where it stands there first. */
interface Standing extends WordSaid {
  at: PlaceFound;
}

/** One fault or cure over the jobs. */
class Tally {
  jobs = 0;
  readonly places: PlaceFound[] = [];
  private readonly spellings = new Map<string, number>();

  add({ said, at }: Standing, most: number): void {
    this.jobs += 1;
    if (this.places.length < most) this.places.push(at);
    this.spellings.set(said, (this.spellings.get(said) ?? 0) + 1);
  }

  /** The way it is written most often in this workshop; the shorter of two. */
  get said(): string {
    const [first] = [...this.spellings].sort(
      ([a, often], [b, times]) => times - often || a.length - b.length || a.localeCompare(b),
    );
    return first?.[0] ?? '';
  }
}

class FaultTally extends Tally {
  readonly cures = new Map<string, Tally>();
  shown = 0;
  without = 0;
}

/**
 * What was found by instrument type, and what was done in the same jobs, by the trade's own words, so that a hum is a
 * hum however it was written. Work counts as the cure of a fault where the job had that one trouble, or where the
 * archive's list of troubles names it as one. That a cure held is nobody's claim here: it was done, and the moment shows it.
 * @param jobs the newest first
 */
export function faultsOf(
  jobs: readonly FaultJob[],
  own: readonly OwnSynonym[],
  bounds: Bounds,
  only = '',
): Fault[] {
  const tallies = new Map<string, { instrument: string; word: string; tally: FaultTally }>();
  for (const told of jobs) {
    const faults = standingIn(told, told.found, own).filter(({ word }) => isFault(word));
    const wanted = only === '' ? faults : faults.filter(({ word }) => word === only);
    if (wanted.length === 0) continue;
    const done = curesIn(told, own);
    for (const fault of wanted) {
      const { instrument } = told.job;
      const key = `${instrument}|${fault.word}`;
      const { tally } = tallies.get(key) ?? { tally: new FaultTally() };
      tallies.set(key, { instrument, word: fault.word, tally });
      count(tally, fault, curesFor(fault, faults, done), told.hasResult, bounds);
    }
  }
  return [...tallies.values()]
    .map(({ instrument, word, tally }) => asFault(instrument, word, tally, bounds))
    .sort(
      (a, b) => b.jobs - a.jobs || a.instrument.localeCompare(b.instrument) || a.said.localeCompare(b.said),
    );
}

function count(
  tally: FaultTally,
  fault: Standing,
  cures: Standing[],
  hasResult: boolean,
  bounds: Bounds,
): void {
  tally.add(fault, bounds.moments);
  if (hasResult) tally.shown += 1;
  if (cures.length === 0) tally.without += 1;
  for (const cure of cures) {
    const known = tally.cures.get(cure.word) ?? new Tally();
    tally.cures.set(cure.word, known);
    known.add(cure, bounds.moments);
  }
}

/** Every word of the trade in these texts, once, where it stands first: with a moment where there is one. */
function standingIn({ job }: FaultJob, texts: readonly Told[], own: readonly OwnSynonym[]): Standing[] {
  const standing = new Map<string, Standing>();
  for (const { text, moment } of texts) {
    for (const { word, said } of tradeWordsOf(text, own)) {
      const known = standing.get(word);
      if (!known || (known.at.moment === null && moment !== null))
        standing.set(word, { word, said, at: { job, said: text, moment } });
    }
  }
  return [...standing.values()];
}

/**
 * The work of a job by its words; work that the list of troubles has no word for, as it was written. "Cure the hum" names
 * a fault alone, and tells of no cure.
 */
function curesIn(told: FaultJob, own: readonly OwnSynonym[]): Standing[] {
  const { job, done } = told;
  const unnamed = done.filter(
    ({ text }) => !tradeWordsOf(text, own).some(({ word }) => isCure(word) || isFault(word)),
  );
  return [
    ...standingIn(told, done, own).filter(({ word }) => isCure(word)),
    ...unnamed.map(({ text, moment }) => ({
      word: text.toLowerCase(),
      said: text,
      at: { job, said: text, moment },
    })),
  ];
}

function curesFor(fault: Standing, faults: readonly Standing[], done: readonly Standing[]): Standing[] {
  const isOneTrouble = faults.every(({ word }) => word === fault.word || shareTrouble(word, fault.word));
  return done
    .filter(({ word }) => word !== fault.word)
    .filter(({ word }) => isOneTrouble || goTogether(fault.word, word));
}

function asFault(instrument: string, word: string, tally: FaultTally, bounds: Bounds): Fault {
  const { jobs, said, shown, without } = tally;
  const cures = [...tally.cures]
    .map(([cure, known]) => ({
      word: cure,
      said: calledAs(cure) ?? known.said,
      jobs: known.jobs,
      moments: known.places,
    }))
    .sort(
      (a, b) =>
        b.jobs - a.jobs || Number(isCure(b.word)) - Number(isCure(a.word)) || a.said.localeCompare(b.said),
    )
    .slice(0, bounds.cures);
  return { instrument, word, said: calledAs(word) ?? said, jobs, found: tally.places, cures, shown, without };
}
