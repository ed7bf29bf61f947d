import type { Marker } from '@/shared/markers';
import type { HeardProposal } from '@/shared/narration';
import type { Reading } from '@/shared/readings';
import type { WorkItem } from '@/shared/work';

/** How far apart what was said and what was noted by hand may lie and still be the same thing. */
const nearMs = 8_000;

interface Place {
  takeId: string;
  startMs: number;
}

/** Whether a hand has put on the record already what the words propose: then there is nothing to propose. */
export function isOnRecord(
  heard: HeardProposal,
  { takeId, startMs }: Place,
  markers: readonly Marker[],
  readings: readonly Reading[],
  work: readonly Pick<WorkItem, 'what' | 'begun' | 'ended'>[],
): boolean {
  const isNear = (place: { takeId: string | null; ms: number | null }) =>
    place.takeId === takeId && place.ms !== null && Math.abs(place.ms - startMs) <= nearMs;
  if (heard.type === 'marker')
    return markers.some((marker) => marker.kind === heard.payload.markerKind && isNear(marker));
  if (heard.type === 'work')
    return work.some(
      ({ what, begun, ended }) =>
        shareAWord(what, heard.payload.description) &&
        [begun, ended].some((moment) => moment !== null && isNear(moment)),
    );
  if (heard.type !== 'reading') return false;
  const { kind, open, digits, value, sign } = heard.payload;
  const said = Number(digits ?? value);
  return readings.some((reading) => {
    if (reading.kind !== kind || !isNear(reading)) return false;
    if (kind === 'polarity-kick')
      return sign === null || reading.details.sign === (sign === 'positive' ? 1 : -1);
    return open ? reading.open : Number(reading.valueText) === said;
  });
}

function shareAWord(one: string, other: string): boolean {
  const words = (text: string) => text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];
  const known = new Set(words(one));
  return words(other).some((word) => known.has(word));
}
