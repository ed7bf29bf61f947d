import type { DateSource } from '@/shared/backlog';
import type { Probe } from '@/shared/media';
import { dateInName, daysApart, wallDay } from './name-dates';

/** What a date is worked out from. */
export interface DatedFacts {
  /** Below the recordings folder, with forward slashes. */
  path: string;
  /** As the recording tells it; source `file` where it tells nothing. */
  recordedAt: Probe['recordedAt'];
  /** Minutes that cameras of this folder are to be put forward. */
  clockOffsetMinutes: number;
  /** Milliseconds since 1970-01-01T00:00Z. */
  modifiedAt: number;
  durationMs: number;
}

/** The day of a recording at the workshop, and where it is known from. */
export interface Dated {
  /** ISO 8601; null where nothing tells a day. */
  day: string | null;
  /** When it began, by the clock on the wall in milliseconds since 1970-01-01T00:00; null where only the day is known. */
  wallMs: number | null;
  from: DateSource;
  /** What the camera's clock says where a date in the name says otherwise; null where they agree. */
  cameraDay: string | null;
}

/** Tells the wall clock at a moment. */
export type WallClock = (epochMs: number) => number;

const oldestDay = '1990-01-01';
/** A name's date and the camera's clock may differ by the night between. */
const mostDaysApart = 1;

/** The clock on the wall of a time zone. @param timeZone IANA name, such as Europe/Berlin */
export function wallClockOf(timeZone: string): WallClock {
  const format = new Intl.DateTimeFormat('en-GB', {
    ...{ timeZone, calendar: 'iso8601', hourCycle: 'h23' },
    ...{ year: 'numeric', month: '2-digit', day: '2-digit' },
    ...{ hour: '2-digit', minute: '2-digit', second: '2-digit' },
  });
  return (epochMs) => {
    const parts = Object.fromEntries(format.formatToParts(epochMs).map(({ type, value }) => [type, value]));
    const [year, month, day] = [Number(parts.year), Number(parts.month), Number(parts.day)];
    return Date.UTC(year, month - 1, day, Number(parts.hour), Number(parts.minute), Number(parts.second));
  };
}

/**
 * When a recording was made. What the recording itself tells comes first, set right by the folder's camera clock; then
 * a date in its name, then one in the name of a folder that holds it, the nearest first; last the date of the file,
 * which a camera sets when it ends the recording (*common practice, no source*).
 *
 * A whole date in the name that is more than a day off the recording's own is believed instead: camera clocks go wrong,
 * and what was cut or converted later tells the day of that.
 * @param latestDay the day of asking; what claims to be later is not believed
 */
export function dated(facts: DatedFacts, wall: WallClock, latestDay: string): Dated {
  const [name = '', ...holders] = facts.path.split('/').reverse();
  const camera = byCamera(facts, wall, latestDay);
  const named = dateInName(name, latestDay);
  if (camera && named && daysApart(camera.day, named.day) > mostDaysApart)
    return { ...named, from: 'name', cameraDay: camera.day };
  if (camera) return { ...camera, from: 'recording', cameraDay: null };
  if (named) return { ...named, from: 'name', cameraDay: null };
  const held = holders.map((holder) => dateInName(holder, latestDay)).find((date) => date !== null);
  if (held) return { ...held, wallMs: null, from: 'folder', cameraDay: null };
  const filed = likely(wall(facts.modifiedAt - facts.durationMs), latestDay);
  if (filed) return { ...filed, from: 'file', cameraDay: null };
  return { day: null, wallMs: null, from: 'nothing', cameraDay: null };
}

function byCamera({ recordedAt, clockOffsetMinutes }: DatedFacts, wall: WallClock, latestDay: string) {
  if (!recordedAt || recordedAt.source === 'file') return null;
  const { epochMs, offsetMinutes } = recordedAt;
  if (offsetMinutes !== null) return likely(epochMs + offsetMinutes * 60_000, latestDay);
  return likely(wall(epochMs + clockOffsetMinutes * 60_000), latestDay);
}

function likely(wallMs: number, latestDay: string): { day: string; wallMs: number } | null {
  const day = wallDay(wallMs);
  return day >= oldestDay && day <= latestDay ? { day, wallMs } : null;
}
