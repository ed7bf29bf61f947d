import { closeSync, fstatSync, openSync } from 'node:fs';
import type { CutChapter } from '@/shared/cut-engine';
import { readAt, writeAt } from './file-bytes';
import {
  type Box,
  box,
  boxAt,
  boxesIn,
  fullBox,
  number64,
  numbers16,
  numbers32,
  readBoxHead,
} from './mp4-boxes';

const ticks = 1000;
/** ISO/IEC 14496-12, 8.4.2.3: three letters of five bits each; "und". */
const noLanguage = 0x55c4;
/** `encd`: the text is UTF-8 (QuickTime File Format, "Text Sample Data"). */
const utf8Mark = Buffer.from([0, 0, 0, 12, 0x65, 0x6e, 0x63, 0x64, 0, 0, 1, 0]);
/** ISO/IEC 14496-12, 8.3.2: the movie's matrix that turns nothing. */
const unturned = numbers32(1 << 16, 0, 0, 0, 1 << 16, 0, 0, 0, 1 << 30);

/** Bytes that the index grows by, at the most. */
export function mp4ChapterRoom(chapters: readonly CutChapter[]): number {
  return 2000 + chapters.length * 24;
}

/**
 * Puts a chapter track into a finished MP4 whose index stands at the front with room behind it: a text track that the
 * picture refers to by a track reference of type `chap` (QuickTime File Format, "CutChapter Lists").
 */
export function addMp4Chapters(path: string, chapters: readonly CutChapter[], durationMs: number): void {
  const file = openSync(path, 'r+');
  try {
    const { moov, roomEnd, fileEnd } = findIndex(file);
    const texts = chapters.map(({ title }) => textSample(title));
    const old = readAt(file, moov.start, moov.end - moov.start);
    const fresh = withChapters(old, { chapters, texts, durationMs, textsAt: fileEnd + 8 });
    const left = roomEnd - moov.start - fresh.length;
    if (left < 8) throw new Error('The index of the cut has outgrown its room');
    writeAt(file, box('mdat', ...texts), fileEnd);
    const filler = Buffer.alloc(8);
    filler.writeUInt32BE(left);
    filler.write('free', 4, 'latin1');
    writeAt(file, Buffer.concat([fresh, filler]), moov.start);
  } finally {
    closeSync(file);
  }
}

/** The chapters of an MP4, from the text track that a `chap` reference leads to. */
export function readMp4Chapters(path: string): CutChapter[] {
  const file = openSync(path, 'r');
  try {
    const moov = topBoxes(file).find(({ type }) => type === 'moov');
    if (!moov) return [];
    const bytes = readAt(file, moov.start, moov.end - moov.start);
    const track = chapterTrack(bytes);
    return track ? samplesOf(bytes, track).map((sample) => readChapter(file, sample)) : [];
  } finally {
    closeSync(file);
  }
}

function findIndex(file: number): { moov: Box; roomEnd: number; fileEnd: number } {
  const boxes = topBoxes(file);
  const place = boxes.findIndex(({ type }) => type === 'moov');
  const [moov, room] = [boxes[place], boxes[place + 1]];
  if (!moov || room?.type !== 'free') throw new Error('The cut has no room behind its index');
  const fileEnd = fstatSync(file).size;
  if (boxes.at(-1)?.end !== fileEnd) throw new Error('The cut is not whole');
  return { moov, roomEnd: room.end, fileEnd };
}

function topBoxes(file: number): Box[] {
  const { size } = fstatSync(file);
  const boxes: Box[] = [];
  for (let at = 0; at < size; ) {
    const next = readBoxHead(readAt(file, at, Math.min(16, size - at)), at, size - at);
    if (!next) break;
    boxes.push(next);
    at = next.end;
  }
  return boxes;
}

interface Texts {
  chapters: readonly CutChapter[];
  texts: readonly Buffer[];
  durationMs: number;
  /** Place in the file of the first text. */
  textsAt: number;
}

function withChapters(moov: Buffer, texts: Texts): Buffer {
  const parts = boxesIn(moov, 8).map((one) => Buffer.from(moov.subarray(one.start, one.end)));
  const types = parts.map((part) => part.toString('latin1', 4, 8));
  const movie = parts[types.indexOf('mvhd')];
  const traks = parts.filter((_, i) => types[i] === 'trak');
  const shown = traks.find((trak) => handlerOf(trak) === 'vide') ?? traks[0];
  if (!movie || !shown) throw new Error('The cut has no track');
  const id = movie.readUInt32BE(movie.length - 4);
  movie.writeUInt32BE(id + 1, movie.length - 4);
  const timescale = movie.readUInt32BE(8 + (movie[8] === 1 ? 20 : 12));
  const kept = parts.map((part) => (part === shown ? withReference(part, id) : part));
  const lastTrack = types.lastIndexOf('trak');
  kept.splice(lastTrack + 1, 0, textTrack(id, timescale, texts));
  return box('moov', ...kept);
}

function handlerOf(trak: Buffer): string | null {
  const handler = boxAt(trak, 'trak/mdia/hdlr');
  return handler && trak.toString('latin1', handler.content + 8, handler.content + 12);
}

function withReference(trak: Buffer, id: number): Buffer {
  return box('trak', trak.subarray(8), box('tref', box('chap', numbers32(id))));
}

function textTrack(id: number, movieTimescale: number, texts: Texts): Buffer {
  const { chapters, durationMs } = texts;
  const firstMs = chapters[0]?.startMs ?? 0;
  const inMovie = (ms: number) => Math.round((ms * movieTimescale) / 1000);
  const spanMs = durationMs - firstMs;
  // Not enabled: it is not shown with the picture.
  const head = fullBox(
    'tkhd',
    0,
    2,
    numbers32(0, 0, id, 0, inMovie(durationMs), 0, 0),
    numbers16(0, 0, 0, 0),
    unturned,
    numbers32(0, 0),
  );
  const delay = firstMs > 0 ? [numbers32(inMovie(firstMs), -1, 1 << 16)] : [];
  const edits = fullBox(
    'elst',
    0,
    0,
    numbers32(delay.length + 1),
    ...delay,
    numbers32(inMovie(spanMs), 0, 1 << 16),
  );
  const media = fullBox('mdhd', 0, 0, numbers32(0, 0, ticks, spanMs), numbers16(noLanguage, 0));
  const handler = fullBox(
    'hdlr',
    0,
    0,
    numbers32(0),
    Buffer.from('text'),
    numbers32(0, 0, 0),
    Buffer.from('\0'),
  );
  return box('trak', head, box('edts', edits), box('mdia', media, handler, textMedia(texts)));
}

/** QuickTime File Format, "Base Media Information Atoms" and "Text Sample Description". */
function textMedia(texts: Texts): Buffer {
  const base = fullBox('gmin', 0, 0, numbers16(0x40, -0x8000, -0x8000, -0x8000, 0, 0));
  const source = fullBox('dref', 0, 0, numbers32(1), fullBox('url ', 0, 1));
  return box('minf', box('gmhd', base, box('text', unturned)), box('dinf', source), sampleTable(texts));
}

function sampleTable({ chapters, texts, durationMs, textsAt }: Texts): Buffer {
  const starts = [...chapters.map(({ startMs }) => startMs), durationMs];
  const lengths = chapters.map((_, i) => numbers32(1, Math.max(0, (starts[i + 1] ?? 0) - (starts[i] ?? 0))));
  const entry = box(
    'text',
    Buffer.alloc(6),
    numbers16(1),
    numbers32(1, 0),
    Buffer.alloc(34),
    Buffer.from([0]),
  );
  return box(
    'stbl',
    fullBox('stsd', 0, 0, numbers32(1), entry),
    fullBox('stts', 0, 0, numbers32(chapters.length), ...lengths),
    fullBox('stsc', 0, 0, numbers32(1, 1, chapters.length, 1)),
    fullBox('stsz', 0, 0, numbers32(0, texts.length, ...texts.map(({ length }) => length))),
    fullBox('co64', 0, 0, numbers32(1), number64(textsAt)),
  );
}

function textSample(title: string): Buffer {
  const text = Buffer.from(title);
  return Buffer.concat([numbers16(text.length), text, utf8Mark]);
}

function chapterTrack(moov: Buffer): Box | null {
  const traks = boxesIn(moov, 8).filter(({ type }) => type === 'trak');
  const wanted = traks.map((trak) => boxAt(moov, 'tref/chap', trak)).find((found) => found !== null);
  const id = wanted && moov.readUInt32BE(wanted.content);
  return traks.find((trak) => id !== null && trackId(moov, trak) === id) ?? null;
}

function trackId(moov: Buffer, trak: Box): number | null {
  const head = boxAt(moov, 'tkhd', trak);
  return head && moov.readUInt32BE(head.content + (moov[head.content] === 1 ? 20 : 12));
}

interface TextPlace {
  startMs: number;
  at: number;
  length: number;
}

/** Reads what {@link addMp4Chapters} writes: one chunk, milliseconds, a delay before the first. */
function samplesOf(moov: Buffer, trak: Box): TextPlace[] {
  const table = boxAt(moov, 'mdia/minf/stbl', trak);
  const [times, sizes, chunks] = ['stts', 'stsz', 'co64'].map((type) => table && boxAt(moov, type, table));
  if (!times || !sizes || !chunks) return [];
  const edits = boxAt(moov, 'edts/elst', trak);
  const delayed = edits !== null && moov.readUInt32BE(edits.content + 4) === 2;
  let startMs = delayed ? moov.readUInt32BE(edits.content + 8) : 0;
  let at = Number(moov.readBigUInt64BE(chunks.content + 8));
  return Array.from({ length: moov.readUInt32BE(sizes.content + 8) }, (_, i) => {
    const length = moov.readUInt32BE(sizes.content + 12 + i * 4);
    const place = { startMs, at, length };
    startMs += moov.readUInt32BE(times.content + 8 + i * 8 + 4);
    at += length;
    return place;
  });
}

function readChapter(file: number, { startMs, at, length }: TextPlace): CutChapter {
  const sample = readAt(file, at, length);
  return { startMs, title: sample.toString('utf8', 2, 2 + sample.readUInt16BE(0)) };
}
