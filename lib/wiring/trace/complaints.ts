import type { Contradiction, TraceReading } from '@/shared/wiring';
import { sentence } from './say';

/** A contradiction before the moments of its readings are looked up. */
export type Complaint = { key: string; text: string; readings: string[] };

/** Each contradiction once, with the moments of the readings it names. */
export function withMoments(
  complaints: readonly Complaint[],
  readings: readonly TraceReading[],
): Contradiction[] {
  const byId = new Map(readings.map((reading) => [reading.id, reading]));
  const once = new Map(complaints.map((complaint) => [complaint.key, complaint]));
  return [...once.values()]
    .sort((x, y) => (x.key < y.key ? -1 : 1))
    .map((complaint) => ({
      ...complaint,
      text: sentence(complaint.text),
      moments: complaint.readings.flatMap((id) => {
        const moment = byId.get(id)?.moment;
        return moment ? [{ reading: id, moment }] : [];
      }),
    }));
}
