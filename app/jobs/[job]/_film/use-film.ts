'use client';

import { createContext, useCallback, useContext, useSyncExternalStore } from 'react';
import type { FilmPlayer } from './film-player';

const PlayerContext = createContext<FilmPlayer | null>(null);
export const PlayerProvider = PlayerContext.Provider;

/** The film player of this page; null until its picture is on the page. */
export function usePlayer(): FilmPlayer | null {
  return useContext(PlayerContext);
}

const changes = [
  'timeupdate',
  'play',
  'pause',
  'seeking',
  'durationchange',
  'ratechange',
  'problem',
] as const;

/** A value read off the player; the page is drawn again only when that value changes. */
export function usePlayerValue<T extends string | number | boolean | null>(
  read: (player: FilmPlayer) => T,
  before: T,
): T {
  const player = usePlayer();
  const subscribe = useCallback(
    (changed: () => void) => {
      for (const change of changes) player?.addEventListener(change, changed);
      return () => {
        for (const change of changes) player?.removeEventListener(change, changed);
      };
    },
    [player],
  );
  return useSyncExternalStore(
    subscribe,
    () => (player ? read(player) : before),
    () => before,
  );
}
