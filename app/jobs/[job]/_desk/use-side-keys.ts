'use client';

import { useEffect } from 'react';
import { tinykeys } from 'tinykeys';
import type { FilmPlayer } from '../_film/film-player';
import { isTyping } from './use-keys';
import { useDesk } from './use-record';

/** The few keys that worksheets share with the job's page. */
export function useSideKeys(player: FilmPlayer | null): void {
  const { undo, redo } = useDesk();
  useEffect(() => {
    const bind = (work: () => void) => (event: KeyboardEvent) => {
      if (event.defaultPrevented || isTyping(event)) return;
      event.preventDefault();
      work();
    };
    return tinykeys(window, {
      Space: bind(() => player?.toggle()),
      ArrowLeft: bind(() => player?.seek(player.filmMs - 1000)),
      ArrowRight: bind(() => player?.seek(player.filmMs + 1000)),
      'Shift+ArrowLeft': bind(() => player?.seek(player.filmMs - 10_000)),
      'Shift+ArrowRight': bind(() => player?.seek(player.filmMs + 10_000)),
      n: bind(() => document.querySelector<HTMLElement>('[data-next-pair]')?.click()),
      '$mod+z': bind(() => void undo()),
      '$mod+Shift+z': bind(() => void redo()),
    });
  }, [player, undo, redo]);
}
