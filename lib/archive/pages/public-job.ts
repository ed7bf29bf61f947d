import { layOut, oneLine } from '@/lib/film';
import {
  chaptersOfPublished,
  findingsIn,
  type PublishedFilm,
  publicWordsFor,
  publishedFilm,
  withoutPrices,
} from '@/lib/handover';
import { isConductorColour } from '@/lib/wiring';
import { type PublicJob, publicJobSchema } from '@/shared/archive-exports';
import type { Finding } from '@/shared/cut';
import type { Marker } from '@/shared/markers';
import type { ToldJob } from '../things';
import type { WithoutOthers } from './others';
import { chapterTime, type GivenJob, tellJob } from './told-public';

/** A job whose client is known with all that is private of them. */
export type KnownJob = Omit<ToldJob, 'client'> & {
  client: (NonNullable<ToldJob['client']> & { reach: string | null }) | null;
};

/** Private words stand in what is written for all to read; the rest is cleared without asking. */
export interface ClearedBy {
  /** Ids of findings that may go public, as the hand-over keeps them. */
  allowed: readonly string[];
  withoutOthers: WithoutOthers;
}

const nothingSpoken = { proposals: [], published: publishedFilm(layOut([]), []) };

/** Private words in the title and the chapters of a job: the findings of its hand-over, as far as pages carry them. */
export function findingsOfTold(
  { job, instrument, client, markers }: KnownJob,
  allowed: readonly string[],
): Finding[] {
  return findingsIn({
    known: { clientName: client?.name ?? null, reach: client?.reach ?? null, serial: instrument.serial },
    title: job.title,
    markers,
    notes: [],
    allowed,
    ...nothingSpoken,
  });
}

/**
 * A job as anybody may see it; null where a finding stands open. Public markers alone are told, and only those that
 * the published film shows. Every text is cleared of what is private and of prices; of title and chapters what was
 * allowed on purpose stays.
 */
export function publicJobOf(given: GivenJob & { told: KnownJob }, by: ClearedBy): PublicJob | null {
  const findings = findingsOfTold(given.told, by.allowed);
  if (findings.some(({ decision }) => decision === 'open')) return null;
  const markers = shownMarkers(given.told.markers, given.published);
  const raw = tellJob(given, markers);
  return withAllowed(cleared(raw, given.told, by), raw, given, findings, by);
}

/** Public markers that the published film shows, in its order, as `tellJob` puts them: those that make chapters. */
export function shownMarkers(markers: readonly Marker[], published: PublishedFilm): Marker[] {
  const { notes } = chaptersOfPublished(published, markers, '');
  const dropped = new Set(notes.filter(({ what }) => what === 'dropped').map(({ markerId }) => markerId));
  return markers
    .filter((marker) => marker.public && !dropped.has(marker.id))
    .map((marker) => ({ marker, ms: chapterTime(published, marker) ?? 0 }))
    .sort((x, y) => x.ms - y.ms)
    .map(({ marker }) => marker);
}

/** Fields whose words the program, a list or the meter gives. */
const notWritten: ReadonlySet<string> = new Set(['day', 'kind', 'value', 'digits', 'unit', 'basis', 'role']);

/** Walks over all that is told, so that no field can be forgotten. */
function cleared(raw: PublicJob, told: KnownJob, { withoutOthers }: ClearedBy): PublicJob {
  const clear = publicWordsFor({ ...told, client: told.client && { ...told.client, alias: '' } });
  const say = (text: string) => withoutOthers(clear(withoutPrices(oneLine(text))));
  return publicJobSchema.parse(
    JSON.parse(JSON.stringify(raw), (key, value: unknown) =>
      typeof value !== 'string' || notWritten.has(key) || isColourInList(key, value) ? value : say(value),
    ),
  );
}

/** Conductors stand in lists, whose keys are numbers: the white one is not the client of that name. */
function isColourInList(key: string, value: string): boolean {
  return /^\d+$/.test(key) && isConductorColour(value);
}

function withAllowed(
  job: PublicJob,
  raw: PublicJob,
  { told, published }: GivenJob,
  findings: readonly Finding[],
  { withoutOthers }: ClearedBy,
): PublicJob {
  if (findings.length === 0) return job;
  const own = [told.client?.name ?? '', told.instrument.serial ?? ''];
  const asWritten = (text: string) => withoutOthers(withoutPrices(oneLine(text)), own);
  const isFound = (place: string) => findings.some(({ id }) => id.startsWith(`${place}:`));
  const ids = shownMarkers(told.markers, published).map(({ id }) => id);
  return {
    ...job,
    title: isFound('title') ? asWritten(raw.title) : job.title,
    chapters: job.chapters.map((chapter, at) =>
      isFound(`chapter:${ids[at]}`)
        ? { ...chapter, title: asWritten(raw.chapters[at]?.title ?? '') }
        : chapter,
    ),
  };
}
