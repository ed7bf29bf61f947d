import type { Chapter } from '@/lib/film';
import type { JackView } from '@/shared/jack-check';
import type { JobRecord } from '@/shared/jobs';
import type { TraceView } from '@/shared/traces';
import type { Workshop } from '@/shared/workshop';
import type { PublishedFilm } from './published';

/** All that the documents of a job are made from. */
export interface HandoverFacts {
  readonly record: JobRecord;
  readonly traces: readonly TraceView[];
  readonly jack: JackView;
  readonly workshop: Workshop;
  /** The film as it is published, after cuts. */
  readonly published: PublishedFilm;
  /** On the published clock. */
  readonly chapters: readonly Chapter[];
  /** What on this job can hurt someone, in words. */
  readonly cautions: readonly string[];
  /** The day at the workshop, by ISO 8601. */
  readonly today: string;
}
