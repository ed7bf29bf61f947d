'use client';

import type { FilmPlayer } from '../_film/film-player';
import { filmKeys, useKeyActions } from './film-keys';
import { useDesk } from './use-record';

const sideKeys = {
  ...filmKeys,
  n: () => document.querySelector<HTMLElement>('[data-next-pair]')?.click(),
};

/** The few keys that worksheets share with the job's page. */
export function useSideKeys(player: FilmPlayer | null): void {
  useKeyActions(sideKeys, { player, desk: useDesk() });
}
