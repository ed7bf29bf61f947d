import type { JobId } from '@/shared/ids';
import type { TyingPlace } from '@/shared/loose-ends';
import type { FilmMoment } from '@/shared/moments';

/** The page on which a loose end of a job is tied up, at the very spot. */
export function addressOf(jobId: JobId, place: TyingPlace): string {
  const job = `/jobs/${jobId}`;
  switch (place.on) {
    case 'ticket':
      return `${job}/ticket#${encodeURIComponent(place.anchor)}`;
    case 'trace':
      return `${job}/trace/${place.traceId}`;
    case 'jack':
      return `${job}/jack`;
    case 'film':
      return addressOfMoment(jobId, place.moment);
    case 'sheet':
      return `${job}?line=${encodeURIComponent(place.line)}`;
    case 'proposals':
      return `${job}?go=proposals`;
    case 'hand-over':
      return `${job}/hand-over#${encodeURIComponent(place.anchor)}`;
  }
}

/** The job with its film at this moment. */
export function addressOfMoment(jobId: JobId, { takeId, ms }: FilmMoment): string {
  return `/jobs/${jobId}?take=${takeId}&ms=${ms}`;
}
