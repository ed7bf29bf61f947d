'use client';

import { useState } from 'react';
import type { JobRecord } from '@/shared/jobs';
import type { FilmPlayer } from '../_film/film-player';
import { PlayerProvider } from '../_film/use-film';
import { DeskProvider, useFreshRecord, useRecord } from './use-record';

interface DeskFrameProps {
  first: JobRecord;
  /** Draws the desk; the picture on it says by this call which player it has. */
  children: (onPlayer: (player: FilmPlayer | null) => void) => React.ReactNode;
}

/** Hands the job's record and the film player to everything on a desk. */
export function DeskFrame({ first, children }: DeskFrameProps) {
  const desk = useRecord(first.job.id, first);
  const [player, setPlayer] = useState<FilmPlayer | null>(null);
  useFreshRecord(desk);
  return (
    <DeskProvider value={desk}>
      <PlayerProvider value={player}>{children(setPlayer)}</PlayerProvider>
    </DeskProvider>
  );
}
