import { type Film, filmTimeOf } from '@/lib/film';
import { sayHeard } from '@/lib/narration';
import { sayReading } from '@/lib/readings';
import type { JobRecord } from '@/shared/jobs';
import type { Marker } from '@/shared/markers';
import type { KeptLine, Narration, Proposal } from '@/shared/narration-record';
import type { Reading } from '@/shared/readings';
import type { OutcomeRecord } from '@/shared/traces';

/** A line of the running sheet. `filmMs` is null for what has no moment on the film. */
export type SheetLine = { id: string; filmMs: number | null; shown: boolean } & (
  | { type: 'marker'; marker: Marker }
  | { type: 'reading'; reading: Reading }
  | { type: 'joint'; joint: OutcomeRecord }
  | { type: 'proposal'; proposal: Proposal }
  | { type: 'spoken'; spoken: KeptLine }
);

/** The sheet as it runs down the page: by film time, heads before the small print, the unpinned last. */
export function sheetLines(film: Film, record: JobRecord, { lines, proposals }: Narration): SheetLine[] {
  const markers = record.markers.map(
    (marker): SheetLine => ({
      id: marker.id,
      type: 'marker',
      marker,
      ...place(film, marker.takeId, marker.ms),
    }),
  );
  const readings = record.readings.map(
    (reading): SheetLine => ({
      id: reading.id,
      type: 'reading',
      reading,
      ...place(film, reading.takeId, reading.ms),
    }),
  );
  const joints = record.outcomes.map(
    (joint): SheetLine => ({ id: joint.id, type: 'joint', joint, ...place(film, joint.takeId, joint.ms) }),
  );
  // What became a marker or a reading stands on the sheet as such already.
  const standing = proposals.filter(
    ({ decision, recordId }) => decision !== 'dismissed' && recordId === null,
  );
  const heard = standing.map(
    (proposal): SheetLine => ({
      id: proposal.id,
      type: 'proposal',
      proposal,
      ...place(film, proposal.takeId, proposal.startMs),
    }),
  );
  const spoken = lines.map(
    (line): SheetLine => ({
      id: line.id,
      type: 'spoken',
      spoken: line,
      ...place(film, line.takeId, line.startMs),
    }),
  );
  return [...markers, ...readings, ...joints, ...heard, ...spoken].sort((a, b) => order(a) - order(b));
}

/** The last line at or before a film time: where the sheet is while the film plays. */
export function lineAt(lines: readonly SheetLine[], filmMs: number): SheetLine | null {
  return lines.filter((line) => line.filmMs !== null && line.filmMs <= filmMs).at(-1) ?? null;
}

/** Everything that can be read in a line, for finding it again. */
export function wordsOfLine(line: SheetLine): string {
  switch (line.type) {
    case 'marker':
      return line.marker.title;
    case 'reading':
      return sayReading(line.reading);
    case 'joint':
      return `${line.joint.outcome.subject} ${line.joint.outcome.title}`;
    case 'proposal':
      return sayHeard(line.proposal.heard);
    case 'spoken':
      return line.spoken.text;
  }
}

function place(film: Film, takeId: Marker['takeId'] | null, ms: number | null) {
  const at = takeId !== null && ms !== null ? filmTimeOf(film, { takeId, ms }) : null;
  return at ?? { filmMs: null, shown: false };
}

function order(line: SheetLine): number {
  return line.filmMs ?? Number.MAX_SAFE_INTEGER;
}
