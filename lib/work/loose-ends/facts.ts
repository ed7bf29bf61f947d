import type { Claim } from '@/shared/claims';
import type { Client } from '@/shared/clients';
import type { ReadingId, TakeId } from '@/shared/ids';
import type { JackJudgement } from '@/shared/jack';
import type { Instrument, Job } from '@/shared/jobs';
import type { Marker } from '@/shared/markers';
import type { FilmMoment } from '@/shared/moments';
import type { ProposalType } from '@/shared/narration';
import type { OutcomeRecord, TraceView } from '@/shared/traces';
import type { WorkItem } from '@/shared/work';

/** When it was written down: milliseconds since 1970-01-01T00:00Z. */
interface Noted {
  readonly createdAt: number;
}

export interface TakeFacts extends Noted {
  readonly id: TakeId;
  readonly name: string;
  /** Where the take begins on the film's clock. */
  readonly filmStartMs: number;
}

export interface ReadingFacts extends Noted {
  readonly id: ReadingId;
  readonly moment: FilmMoment | null;
  /** Taken at the output jack. */
  readonly atJack: boolean;
}

export type OutcomeFacts = OutcomeRecord & Noted;

export interface TraceFacts extends Pick<TraceView, 'worksheet' | 'analysis' | 'plans' | 'check'>, Noted {
  readonly outcomes: readonly OutcomeFacts[];
}

export type MarkerFacts = Pick<Marker, 'id' | 'takeId' | 'title' | 'public'> & Noted;

/** All of the record that a loose end can follow from. The order within a list is of no meaning. */
export interface LooseEndFacts {
  readonly job: Pick<Job, 'title' | 'state' | 'promisedOn' | 'createdAt'>;
  readonly client: Pick<Client, 'name' | 'alias' | 'reach'> | null;
  readonly instrument: Pick<Instrument, 'serial'>;
  readonly claims: readonly (Pick<Claim, 'id' | 'kind' | 'subject' | 'value' | 'sure'> & Noted)[];
  readonly work: readonly Pick<WorkItem, 'id' | 'what' | 'origin' | 'outcome' | 'why' | 'createdAt'>[];
  readonly takes: readonly TakeFacts[];
  readonly markers: readonly MarkerFacts[];
  readonly readings: readonly ReadingFacts[];
  readonly traces: readonly TraceFacts[];
  /** What the readings at the jack say; null without a harness to hold them against. */
  readonly jack: Pick<JackJudgement, 'verdict' | 'checks'> | null;
  /** What was heard and is not decided on. */
  readonly proposals: readonly { readonly type: ProposalType; readonly moment: FilmMoment }[];
}
