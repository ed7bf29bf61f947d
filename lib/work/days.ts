/** The day of a moment by this machine's clock, as 2026-11-25 (ISO 8601). */
export function dayOf(epochMs: number): string {
  const at = new Date(epochMs);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** The day that a job is known by: when it came in, or else when its ticket was made. */
export function dayOfJob({
  receivedOn,
  createdAt,
}: {
  receivedOn: string | null;
  createdAt: number;
}): string {
  return receivedOn ?? dayOf(createdAt);
}
