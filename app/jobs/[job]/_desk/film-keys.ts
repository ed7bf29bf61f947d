'use client';

import { useEffect, useRef } from 'react';
import { tinykeys } from 'tinykeys';
import type { FilmPlayer } from '../_film/film-player';
import type { RecordDesk } from './use-record';

interface FilmKeysOf {
  player: FilmPlayer | null;
  desk: RecordDesk;
}

/** What a key does to what it is bound on. */
export type KeyAction<On> = (on: On) => unknown;
export type KeyActions<On> = Readonly<Record<string, KeyAction<On>>>;

const stepMs = 1_000;
const longStepMs = 10_000;

/** A step along the film. */
export const step =
  (byMs: number): KeyAction<FilmKeysOf> =>
  ({ player }) =>
    player?.seek(player.filmMs + byMs);

/** The keys that are the same wherever the film is. */
export const filmKeys: KeyActions<FilmKeysOf> = {
  Space: ({ player }) => player?.toggle(),
  ArrowLeft: step(-stepMs),
  ArrowRight: step(stepMs),
  'Shift+ArrowLeft': step(-longStepMs),
  'Shift+ArrowRight': step(longStepMs),
  '$mod+z': ({ desk }) => void desk.undo(),
  '$mod+Shift+z': ({ desk }) => void desk.redo(),
};

/**
 * Binds keys of the page. They rest while something is being typed or a dialog is open.
 * @param actions the same object at every call
 */
export function useKeyActions<On>(actions: KeyActions<On>, on: On): void {
  const latest = useRef(on);
  latest.current = on;
  useEffect(() => {
    const bound = Object.entries(actions).map(
      ([key, action]) => [key, (event: KeyboardEvent) => act(event, action, latest.current)] as const,
    );
    return tinykeys(window, Object.fromEntries(bound));
  }, [actions]);
}

function act<On>(event: KeyboardEvent, action: KeyAction<On>, on: On): void {
  if (event.defaultPrevented || isTyping(event)) return;
  event.preventDefault();
  action(on);
}

/** Typing, choosing in a list and dialogs keep their own keys; Space and Enter press the button that has the focus. */
function isTyping(event: KeyboardEvent): boolean {
  const target = event.target instanceof HTMLElement ? event.target : null;
  if (!target) return false;
  if (target.closest('input:not([type="checkbox"]), textarea, select, [role="dialog"], [contenteditable]'))
    return true;
  return (event.key === ' ' || event.key === 'Enter') && target.closest('button, a, input') !== null;
}
