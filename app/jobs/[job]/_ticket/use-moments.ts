'use client';

import { useMemo } from 'react';
import { filmTimeOf, layOut } from '@/lib/film';
import type { FilmMoment } from '@/shared/moments';
import { useDesk } from '../_desk/use-record';

/** Where moments lie on the film of this job. */
export function useMomentsOnFilm() {
  const { takes } = useDesk().record;
  return useMemo(() => {
    const film = layOut(takes);
    return {
      hasFilm: film.durationMs > 0,
      /** Null where the take is no longer in the film. */
      filmMsOf: (moment: FilmMoment) => filmTimeOf(film, moment)?.filmMs ?? null,
    };
  }, [takes]);
}
