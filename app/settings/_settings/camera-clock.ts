/** How the times in a folder's recordings are set right. */
export const clockWays = ['right', 'earlier', 'later'] as const;
export type ClockWay = (typeof clockWays)[number];

/** No time zone is further from UTC. */
const mostMinutes = 14 * 60;

export interface CameraClock {
  way: ClockWay;
  hours: number;
  minutes: number;
}

/** From signed minutes: below zero, the takes were filmed earlier than their recordings say. */
export function clockOf(offsetMinutes: number): CameraClock {
  const all = Math.abs(offsetMinutes);
  const way = offsetMinutes === 0 ? 'right' : offsetMinutes < 0 ? 'earlier' : 'later';
  return { way, hours: Math.floor(all / 60), minutes: all % 60 };
}

/** Signed minutes to add to what the recordings say, 14 hours at most. */
export function offsetOf({ way, hours, minutes }: CameraClock): number {
  if (way === 'right') return 0;
  return Math.min(hours * 60 + minutes, mostMinutes) * (way === 'earlier' ? -1 : 1);
}

/** "14:00 in a recording counts as 12:00.", with the day where it changes. */
export function clockExample(offsetMinutes: number): string {
  const noonish = 14 * 60;
  const counted = noonish + offsetMinutes;
  const dayMinutes = 24 * 60;
  const day = counted < 0 ? ' the day before' : counted >= dayMinutes ? ' the day after' : '';
  const within = (counted + dayMinutes) % dayMinutes;
  return `14:00 in a recording counts as ${Math.floor(within / 60)}:${String(within % 60).padStart(2, '0')}${day}.`;
}

/** "2 h" or "5 h 30 min". */
export function spanInWords(minutes: number): string {
  const { hours, minutes: rest } = clockOf(minutes);
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(' ');
}
