import type { MarkerKind } from '@/shared/markers';

/** One key a marker: its first letter. */
export const markerKeys: Record<MarkerKind, string> = {
  intake: 'I',
  diagnosis: 'D',
  measurement: 'M',
  work: 'W',
  result: 'R',
};

/** The card of keys, as it is shown on `?`. */
export const keyCard: readonly { keys: readonly string[]; does: string }[] = [
  { keys: ['Space'], does: 'Play or pause' },
  { keys: ['←', '→'], does: 'One second back, on' },
  { keys: ['Shift ←', 'Shift →'], does: 'Ten seconds back, on' },
  { keys: [',', '.'], does: 'A 25th of a second back, on' },
  { keys: ['Home', 'End'], does: 'Start, end of the film' },
  { keys: Object.values(markerKeys), does: 'Drop an intake, diagnosis, measurement, work, result marker' },
  { keys: ['N'], does: 'Note a reading at this moment' },
  { keys: ['P'], does: 'Next proposal from the narration' },
  { keys: ['A', 'X', 'E'], does: 'Accept, dismiss, change the selected proposal' },
  { keys: ['↑', '↓'], does: 'Line before, line after on the sheet' },
  { keys: ['Enter'], does: 'Rename the selected marker' },
  { keys: ['[', ']'], does: 'Nudge the selected marker 0.1 s earlier, later' },
  { keys: ['H'], does: 'Move the selected line here; on a spoken line: it is said now' },
  { keys: ['Delete'], does: 'Delete the selected line' },
  { keys: ['Ctrl Z'], does: 'Undo' },
  { keys: ['Ctrl Shift Z'], does: 'Do again' },
  { keys: ['+', '−'], does: 'Draw the strip out, show more of the film' },
  { keys: ['F'], does: 'Find words on the sheet' },
  { keys: ['T', 'V', 'G', 'C'], does: 'Takes, narration, wiring, chapter list' },
  { keys: ['?'], does: 'This card' },
];
