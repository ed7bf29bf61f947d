/** Two texts below one another, without the lines of the second that stand in the first already. */
export function joinedLines(first: string | null, second: string | null): string | null {
  if (first === null) return second;
  const lines = first.split('\n');
  const known = new Set(lines.map((line) => line.trim()));
  for (const line of (second ?? '').split('\n')) {
    if (known.has(line.trim())) continue;
    known.add(line.trim());
    lines.push(line);
  }
  return lines.join('\n').trim();
}
