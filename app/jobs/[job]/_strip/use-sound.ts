'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { type Film, type FilmSound, levelFor, soundOfFilm } from '@/lib/film';
import type { Take } from '@/shared/takes';

/** Peaks that were loaded: by take, with how many pairs there were then. */
interface Loaded {
  pairs: number;
  level: number;
  peaks: Int8Array;
}

/** The sound of the whole film for drawing; grows while recordings are being read. */
export function useSound(film: Film, takes: readonly Take[]): FilmSound | null {
  const [loaded, setLoaded] = useState<ReadonlyMap<string, Loaded>>(new Map());
  const under = useRef(new Set<string>());
  const level = useMemo(() => {
    const levels = takes.flatMap((take) => take.peaks.map((entry) => entry.pairsPerSecond));
    return levelFor(film.durationMs, [...new Set(levels)]);
  }, [film.durationMs, takes]);

  useEffect(() => {
    if (level === null) return;
    for (const take of takes) {
      const pairs = take.peaks.find((entry) => entry.pairsPerSecond === level)?.pairs ?? 0;
      const had = loaded.get(take.id);
      if (pairs === 0 || under.current.has(take.id) || (had?.level === level && had.pairs >= pairs)) continue;
      under.current.add(take.id);
      void loadPeaks(take.id, level)
        .then((peaks) => setLoaded((before) => new Map(before).set(take.id, { pairs, level, peaks })))
        .catch(() => undefined) // A strip without sound is still a strip; the next change of the record asks again.
        .finally(() => under.current.delete(take.id));
    }
  }, [takes, level, loaded]);

  return useMemo(() => {
    if (level === null || film.durationMs === 0) return null;
    return soundOfFilm(
      film,
      (takeId) => (loaded.get(takeId)?.level === level ? (loaded.get(takeId)?.peaks ?? null) : null),
      level,
    );
  }, [film, level, loaded]);
}

async function loadPeaks(takeId: string, level: number): Promise<Int8Array> {
  const response = await fetch(`/api/takes/${takeId}/peaks?level=${level}`);
  if (!response.ok) throw new Error(`Peaks answered ${response.status}.`);
  return new Int8Array(await response.arrayBuffer());
}
