'use client';

import { useSearchParams } from 'next/navigation';
import { useEffect, useRef } from 'react';
import { z } from 'zod';
import { type Film, filmTimeOf } from '@/lib/film';
import { markerIdSchema, readingIdSchema, takeIdSchema } from '@/shared/ids';
import { takeMsSchema } from '@/shared/markers';
import type { FilmPlayer } from '../_film/film-player';
import type { SheetLine } from '../_sheet/sheet-lines';

const lineSchema = z.object({ line: z.union([markerIdSchema, readingIdSchema]) });
const momentSchema = z.object({
  take: takeIdSchema,
  ms: z.string().regex(/^\d+$/).transform(Number).pipe(takeMsSchema),
});

interface OpenedAt {
  film: Film;
  player: FilmPlayer | null;
  lines: readonly SheetLine[];
  select: (line: SheetLine) => void;
}

/**
 * Goes where the page's address points, once an address: `?line=` with the id of a marker or a reading, `?take=` with
 * `&ms=` in take time, or `?go=proposals` to the first that is open. What is invalid or not in this job is ignored.
 */
export function useOpenedAt({ film, player, lines, select }: OpenedAt): void {
  const address = useSearchParams().toString();
  const done = useRef('');
  useEffect(() => {
    if (!player || address === done.current) return;
    // Takes whose length is still being found out leave nothing to stand on.
    if (film.takes.length > 0 && film.durationMs === 0) return;
    const wanted = Object.fromEntries(new URLSearchParams(address));
    const line = wanted.go === 'proposals' ? openProposal(lines) : lineOf(wanted, lines);
    // Proposals are loaded after the rest.
    if (wanted.go === 'proposals' && !line) return;
    done.current = address;
    const filmMs = filmMsOf(wanted, film);
    if (line) select(line);
    else if (filmMs !== null) player.seek(filmMs);
  }, [address, film, player, lines, select]);
}

function lineOf(wanted: unknown, lines: readonly SheetLine[]): SheetLine | null {
  const { data } = lineSchema.safeParse(wanted);
  return lines.find(({ id }) => id === data?.line) ?? null;
}

function openProposal(lines: readonly SheetLine[]): SheetLine | null {
  return lines.find((line) => line.type === 'proposal' && line.proposal.decision === 'open') ?? null;
}

function filmMsOf(wanted: unknown, film: Film): number | null {
  const { data } = momentSchema.safeParse(wanted);
  return (data && filmTimeOf(film, { takeId: data.take, ms: data.ms })?.filmMs) ?? null;
}
