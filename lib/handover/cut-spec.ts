import type { CutSettings, TakeSpan } from '@/shared/cut';
import type { CutPlanSpec, CutSpan } from '@/shared/cut-engine';
import type { TakeId } from '@/shared/ids';
import type { Proposal } from '@/shared/narration-record';
import type { KeptPiece, PublishedFilm } from './published';

interface CutWords {
  title: string;
  /** On the published clock. */
  chapters: readonly { startMs: number; title: string }[];
}

/**
 * What the engine is told: the kept pieces with what is muted and covered in each.
 * @param pathOf where the recording of a take lies
 * @param heard what was heard; private words are muted unless they were left on purpose
 */
export function cutSpecOf(
  settings: CutSettings,
  published: PublishedFilm,
  heard: readonly Proposal[],
  pathOf: (takeId: TakeId) => string,
  { title, chapters }: CutWords,
): CutPlanSpec {
  const muted = [...settings.muted, ...mutedWords(heard, settings.widenMs)];
  return {
    pieces: published.pieces.map((piece) => ({
      path: pathOf(piece.takeId),
      fromMs: piece.fromMs,
      toMs: piece.toMs,
      mutes: joined(ofTake(muted, piece)),
      covers: ofTake(settings.covers, piece),
    })),
    muteWith: settings.muteWith,
    cutting: settings.cutting,
    loudness: settings.lufs === null ? null : { lufs: settings.lufs },
    title,
    chapters: chapters.map(({ startMs, title: words }) => ({ startMs, title: words })),
  };
}

/**
 * Private words with the margin that the repairer wants around them. One that is still open lies in a part that is left
 * out: it must not be heard where the film begins at the key frame before.
 */
function mutedWords(heard: readonly Proposal[], widenMs: number): TakeSpan[] {
  return heard
    .filter(({ heard: { type }, decision }) => type === 'private' && decision !== 'dismissed')
    .map(({ takeId, startMs, endMs }) => ({
      takeId,
      fromMs: Math.max(0, startMs - widenMs),
      toMs: Math.max(endMs, startMs + 1) + widenMs,
    }));
}

/** All spans of a piece's take: a piece that starts at the key frame before reaches back beyond itself. */
function ofTake<T extends TakeSpan>(spans: readonly T[], piece: KeptPiece): Omit<T, 'takeId'>[] {
  return spans.filter(({ takeId }) => takeId === piece.takeId).map(({ takeId: _, ...span }) => span);
}

/** Spans that touch or overlap are one. */
function joined(spans: readonly CutSpan[]): CutSpan[] {
  const done: { fromMs: number; toMs: number }[] = [];
  for (const { fromMs, toMs } of [...spans].sort((a, b) => a.fromMs - b.fromMs)) {
    const last = done.at(-1);
    if (last && fromMs <= last.toMs) last.toMs = Math.max(last.toMs, toMs);
    else done.push({ fromMs, toMs });
  }
  return done;
}
