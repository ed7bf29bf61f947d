/**
 * A time as a person types it, in milliseconds: "1:02:03.250", "62.5", "1:02". Null where it is none.
 */
export function typedTime(text: string): number | null {
  const match = /^(?:(?:(\d{1,3}):)?(\d{1,3}):)?(\d{1,6})(?:[.,](\d{1,3}))?$/.exec(text.trim());
  if (!match) return null;
  const [, hours = '0', minutes = '0', seconds = '0', thousandths = '0'] = match;
  const hasMinutes = match[2] !== undefined;
  if (hasMinutes && Number(seconds) > 59) return null;
  if (match[1] !== undefined && Number(minutes) > 59) return null;
  const ms = Number(thousandths.padEnd(3, '0'));
  return ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1000 + ms;
}
