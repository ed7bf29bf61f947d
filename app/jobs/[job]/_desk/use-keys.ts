'use client';

import { type MarkerKind, markerKinds } from '@/shared/markers';
import type { FilmPlayer } from '../_film/film-player';
import { useNarrationChanges } from '../_narration/use-narration';
import type { SheetLine } from '../_sheet/sheet-lines';
import { filmKeys, type KeyAction, type KeyActions, step, useKeyActions } from './film-keys';
import { markerKeys } from './keys';
import type { OpenSheet } from './open-sheet';
import { widestZoom } from './transport';
import { useMarkerChanges } from './use-marker-changes';
import { useReadingChanges } from './use-reading-changes';
import { useDesk } from './use-record';

interface KeysOf {
  player: FilmPlayer | null;
  lines: readonly SheetLine[];
  selected: string | null;
  select: (line: SheetLine) => void;
  decided: (line: SheetLine) => void;
  drop: (kind: MarkerKind) => Promise<void>;
  setWriting: (id: string | null) => void;
  setZoom: (next: (zoom: number) => number) => void;
  setOpen: (sheet: OpenSheet) => void;
}

type Action = KeyAction<KeysOf & Changes>;
interface Changes {
  desk: ReturnType<typeof useDesk>;
  markers: ReturnType<typeof useMarkerChanges>;
  readings: ReturnType<typeof useReadingChanges>;
  narration: ReturnType<typeof useNarrationChanges>;
}

const pictureMs = 40;

/** Keys of the job's page. */
export function useKeys(keys: KeysOf): void {
  useKeyActions(actions, {
    ...keys,
    desk: useDesk(),
    markers: useMarkerChanges(),
    readings: useReadingChanges(),
    narration: useNarrationChanges(),
  });
}

const selectedLine = ({ lines, selected }: KeysOf) => lines.find((line) => line.id === selected) ?? null;
const nudge =
  (byMs: number): Action =>
  (on) => {
    const line = selectedLine(on);
    if (line?.type === 'marker') void on.markers.nudge(line.marker, byMs);
  };
const neighbour =
  (by: number): Action =>
  (on) => {
    const from = on.lines.findIndex((line) => line.id === on.selected);
    const to = on.lines[from < 0 && by < 0 ? on.lines.length - 1 : from + by];
    if (to) on.select(to);
  };
const zoom =
  (factor: number): Action =>
  ({ setZoom }) =>
    setZoom((now) => Math.min(widestZoom, Math.max(1, now * factor)));

const openProposal = (on: KeysOf) => {
  const line = selectedLine(on);
  return line?.type === 'proposal' && line.proposal.decision === 'open' ? line : null;
};
const settle =
  (how: 'accept' | 'dismiss'): Action =>
  async (on) => {
    const line = openProposal(on);
    if (line && (await on.narration.decide(line.proposal, how))) on.decided(line);
  };
/** The next proposal that waits, from the selected line on. */
const nextProposal: Action = (on) => {
  const from = on.lines.findIndex((line) => line.id === on.selected) + 1;
  const waiting = [...on.lines.slice(from), ...on.lines.slice(0, from)].find(
    (line) => line.type === 'proposal' && line.proposal.decision === 'open',
  );
  if (waiting) on.select(waiting);
};

const actions: KeyActions<KeysOf & Changes> = {
  ...filmKeys,
  Comma: step(-pictureMs),
  Period: step(pictureMs),
  Home: ({ player }) => player?.seek(0),
  End: ({ player }) => player?.seek(player.durationMs),
  ...Object.fromEntries(
    markerKinds.map((kind): [string, Action] => [
      markerKeys[kind].toLowerCase(),
      ({ drop }) => void drop(kind),
    ]),
  ),
  n: () => document.querySelector<HTMLInputElement>('[data-quick-reading]')?.focus(),
  ArrowUp: neighbour(-1),
  ArrowDown: neighbour(1),
  Enter: (on) => selectedLine(on)?.type === 'marker' && on.setWriting(on.selected),
  BracketLeft: nudge(-100),
  BracketRight: nudge(100),
  h: (on) => {
    const line = selectedLine(on);
    const moment = on.player?.moment ?? null;
    if (line?.type === 'marker') on.markers.moveTo(line.marker.id, moment);
    if (line?.type === 'reading' && moment) void on.readings.moveTo(line.reading.id, moment);
    // The word is heard at this very moment: the whole take's narration moves with its line.
    if (line?.type === 'spoken' && moment?.takeId === line.spoken.takeId) {
      void on.narration.shift(moment.takeId, moment.ms - line.spoken.startMs);
    }
  },
  Delete: (on) => {
    const line = selectedLine(on);
    if (line?.type === 'marker') void on.markers.remove(line.marker);
    if (line?.type === 'reading') void on.readings.remove(line.reading);
  },
  '+': zoom(2),
  'Shift++': zoom(2),
  '=': zoom(2),
  '-': zoom(0.5),
  t: ({ setOpen }) => setOpen('takes'),
  g: ({ setOpen }) => setOpen('wiring'),
  c: ({ setOpen }) => setOpen('chapters'),
  f: () => document.querySelector<HTMLInputElement>('[data-find]')?.focus(),
  v: ({ setOpen }) => setOpen('narration'),
  p: nextProposal,
  a: settle('accept'),
  x: settle('dismiss'),
  e: (on) => openProposal(on) && on.setWriting(on.selected),
  // With Shift where the layout asks for it, without where it does not.
  '?': ({ setOpen }) => setOpen('keys'),
  'Shift+?': ({ setOpen }) => setOpen('keys'),
};
