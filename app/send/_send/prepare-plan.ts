import { z } from 'zod';
import type { Part } from './part';

/** What ffprobe writes of a recording, as far as it matters here (`-of json`). */
const lookSchema = z.object({
  format: z
    .object({ duration: z.coerce.number().optional(), tags: z.record(z.string(), z.string()).optional() })
    .optional(),
  streams: z.array(z.object({ codec_type: z.string().optional() })).default([]),
});

export interface Look {
  durationMs: number | null;
  hasFilm: boolean;
  /** When it was recorded, in ISO 8601 and UTC. */
  recordedAt: string | null;
}

export const lookArguments = (input: string, output: string): string[] => [
  ...['-v', 'error', '-show_entries', 'format=duration:format_tags:stream=codec_type'],
  ...['-of', 'json', '-o', output, input],
];

/** What was written of a recording; null where it could not be opened, and the writing broke off. */
export function readLook(json: string): Look | null {
  const written = writtenIn(json);
  if (written === null) return null;
  const { format, streams } = lookSchema.parse(written);
  return {
    durationMs: format?.duration === undefined ? null : Math.round(format.duration * 1000),
    hasFilm: streams.some(({ codec_type: type }) => type === 'video' || type === 'audio'),
    recordedAt: recordedAtIn(format?.tags ?? {}),
  };
}

function writtenIn(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}

/** A time with its zone is worth more than one that a camera only calls UTC; both are written as UTC. */
function recordedAtIn(tags: Readonly<Record<string, string>>): string | null {
  const zoned = Object.entries(tags).find(([key]) => /(^|\.)creationdate$/i.test(key))?.[1];
  for (const text of [zoned, tags.creation_time]) {
    // Not every browser reads an offset without its colon.
    const at = Date.parse(text?.replace(/([+-]\d\d)(\d\d)$/, '$1:$2') ?? '');
    if (!Number.isNaN(at)) return new Date(at).toISOString();
  }
  return null;
}

/**
 * Copies the part into an MP4: picture and sound as they are, turned as they were, with no tag but the time of
 * recording. `-ss` before the input seeks to the key frame before; `make_zero` shows what was copied from there
 * instead of hiding it behind an edit list, so that nothing lies in the file that is not seen.
 */
export function copyArguments(
  input: string,
  output: string,
  { startMs, endMs }: Part,
  recordedAt: string | null,
): string[] {
  return [
    // A look before it leaves it silent, and silence is taken for hanging.
    ...['-v', 'info', '-stats'],
    ...(startMs > 0 ? ['-ss', seconds(startMs)] : []),
    ...(endMs === null ? [] : ['-to', seconds(endMs)]),
    ...['-i', input, '-map', '0:V?', '-map', '0:a?', '-dn', '-sn', '-c', 'copy'],
    ...['-map_metadata', '-1', '-map_metadata:s', '-1', '-map_chapters', '-1', '-fflags', '+bitexact'],
    ...(recordedAt === null ? [] : ['-metadata', `creation_time=${recordedAt}`]),
    ...['-avoid_negative_ts', 'make_zero', '-movflags', '+faststart', '-f', 'mp4', output],
  ];
}

/** By how much the copy starts before the moment asked for: at the key frame before it. */
export function leadMs(
  { startMs, endMs }: Part,
  wholeMs: number | null,
  copyMs: number | null,
): number | null {
  if (startMs === 0) return 0;
  const end = endMs === null ? wholeMs : Math.min(endMs, wholeMs ?? endMs);
  return end === null || copyMs === null ? null : Math.max(0, copyMs - (end - startMs));
}

function seconds(ms: number): string {
  return (ms / 1000).toFixed(3);
}
