import type { Probe } from '@/shared/media';

/** Tags of a file and its streams, names in lower case. */
export type Tags = Readonly<Record<string, string>>;
type RecordedAt = NonNullable<Probe['recordedAt']>;

/**
 * Local time with its offset, as phones write it beside the UTC time of ISO/IEC 14496-12: `creationdate`, mostly
 * behind the reversed domain name of whoever made the phone.
 */
const zonedKey = /(^|\.)creationdate$/;
/** Seconds since 1904 in the file, which FFmpeg writes out as UTC; Matroska's DateUTC comes by the same name. */
const utcKeys = ['creation_time', 'date_utc'];
const plainKeys = ['date', 'date_recorded', 'datetimeoriginal', 'icrd'];

/** Cameras without a set clock begin at the epoch of some format; no film is that old. */
const oldestMs = Date.UTC(1990, 0, 1);

const isoTime =
  /^(\d{4})[-:](\d\d)[-:](\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,9}))?)?\s*(Z|[+-]\d\d:?\d\d)?$/i;

/** When a recording was made, by its tags or else by its file. */
export function recordedAtOf(tags: Tags, modifiedMs: number, nowMs: number): RecordedAt {
  const zonedKeys = Object.keys(tags).filter((key) => zonedKey.test(key));
  const written = [...zonedKeys, ...utcKeys, ...plainKeys]
    // A tag that stands in a file twice comes as both values with a semicolon between.
    .flatMap((key) => tags[key]?.split(';') ?? [])
    .map(readTime)
    .find((time) => time !== null && isLikely(time, nowMs));
  return written ?? { epochMs: Math.round(modifiedMs), source: 'file', offsetMinutes: null };
}

function isLikely({ epochMs }: RecordedAt, nowMs: number): boolean {
  return epochMs > oldestMs && epochMs < nowMs + 2 * 86_400_000;
}

/** A time without a zone is read as UTC: the camera's clock offset of its folder then puts it right. */
export function readTime(text: string): RecordedAt | null {
  const match = isoTime.exec(text.trim());
  if (!match) return null;
  const [, year, month, day, hour, minute, second = '0', fraction = '0', zone] = match;
  const local = Date.UTC(
    Number(year),
    Number(month) - 1,
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
    Number(`0.${fraction}`) * 1000,
  );
  const offsetMinutes = zone === undefined || /z/i.test(zone) ? null : minutesOf(zone);
  return {
    epochMs: local - (offsetMinutes ?? 0) * 60_000,
    source: offsetMinutes === null ? 'utc' : 'zoned',
    offsetMinutes,
  };
}

function minutesOf(zone: string): number {
  const [hours, minutes] = [zone.slice(1, 3), zone.slice(-2)].map(Number);
  return (zone.startsWith('-') ? -1 : 1) * ((hours ?? 0) * 60 + (minutes ?? 0));
}

const placeKey = /location|gps|iso6709|(^|[^a-z])(xyz|loci)($|[^a-z])|latitude|longitude/;
/** Marks of timed place tracks that action cameras and phones write. */
const placeTracks = new Set(['gpmd', 'camm']);
const deviceKey =
  /(^|[.\-_])(make|model|manufacturer|camera|device|serial_?number|firmware|unique_?id)($|[.\-_])|^com\.\w+\.(.*\.)?(software|version|capture)/;

/** @param tracks four-letter codes of all streams */
export function hasPlace(tags: Tags, tracks: readonly string[]): boolean {
  return (
    tracks.some((track) => placeTracks.has(track)) || Object.keys(tags).some((key) => placeKey.test(key))
  );
}

export function hasDevice(tags: Tags): boolean {
  return Object.keys(tags).some((key) => deviceKey.test(key));
}
