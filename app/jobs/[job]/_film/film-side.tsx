'use client';

import { useCallback } from 'react';
import { type Film, momentAt } from '@/lib/film';
import { Transport } from '../_desk/transport';
import { useMarkerChanges } from '../_desk/use-marker-changes';
import { useDesk } from '../_desk/use-record';
import { FilmStrip } from '../_strip/film-strip';
import type { FilmPlayer } from './film-player';
import { FilmView } from './film-view';

interface FilmSideProps {
  film: Film;
  player: FilmPlayer | null;
  onPlayer: (player: FilmPlayer | null) => void;
  onAddTakes: () => void;
  zoom: number;
  onZoom: (next: (zoom: number) => number) => void;
  selected: string | null;
  onSelect: (id: string) => void;
}

/** The picture, how it plays, and its strip. */
export function FilmSide({
  film,
  player,
  onPlayer,
  onAddTakes,
  zoom,
  onZoom,
  selected,
  onSelect,
}: FilmSideProps) {
  const { record } = useDesk();
  const { moveTo } = useMarkerChanges();
  const move = useCallback(
    (id: string, filmMs: number) => {
      const marker = record.markers.find((candidate) => candidate.id === id);
      if (marker) moveTo(marker.id, momentAt(film, filmMs));
    },
    [film, moveTo, record.markers],
  );
  return (
    <>
      <FilmView film={film} takes={record.takes} onPlayer={onPlayer} onAddTakes={onAddTakes} />
      <Transport film={film} zoom={zoom} onZoom={onZoom} />
      {player && film.durationMs > 0 && (
        <FilmStrip
          player={player}
          film={film}
          record={record}
          zoom={zoom}
          selected={selected}
          onSelect={onSelect}
          onMove={move}
        />
      )}
    </>
  );
}
