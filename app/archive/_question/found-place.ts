import { addressOfMoment } from '@/app/_parts/places';
import type { Found } from '@/shared/archive';

/** Where a thing is opened: at its moment, where it has one; otherwise where it is written. */
export function addressOfFound({ kind, recordId, jobId, moment }: Found): string {
  if (moment) return addressOfMoment(jobId, moment);
  const job = `/jobs/${jobId}`;
  switch (kind) {
    case 'marker':
    case 'reading':
      return `${job}?line=${encodeURIComponent(recordId)}`;
    case 'trace':
      return `${job}/trace/${encodeURIComponent(recordId)}`;
    case 'joint':
    case 'narration':
      return job;
    case 'work':
    case 'part':
    case 'claim':
    case 'instrument':
    case 'ticket':
      return `${job}/ticket`;
  }
}
