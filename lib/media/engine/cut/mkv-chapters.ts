import { closeSync, openSync } from 'node:fs';
import type { CutChapter } from '@/shared/cut-engine';
import {
  type Element,
  element,
  elementsIn,
  master,
  readElement,
  text,
  unsigned,
  voidId,
  voidOf,
} from './ebml';
import { readAt, writeAt } from './file-bytes';

/** Element ids of RFC 9559, section 5.1. */
const ids = {
  segment: 0x18538067,
  seekHead: 0x114d9b74,
  seek: 0x4dbb,
  seekId: 0x53ab,
  seekPosition: 0x53ac,
  cluster: 0x1f43b675,
  chapters: 0x1043a770,
  edition: 0x45b9,
  atom: 0xb6,
  uid: 0x73c4,
  start: 0x91,
  display: 0x80,
  title: 0x85,
  language: 0x437c,
} as const;

/** What stands before the first cluster, with much room to spare. */
const mostHeadBytes = 8 * 1024 * 1024;

/** Bytes that chapters take, at the most. */
export function mkvChapterRoom(chapters: readonly CutChapter[]): number {
  return chapters.reduce((sum, { title }) => sum + 64 + Buffer.byteLength(title), 256);
}

/**
 * Puts chapters (RFC 9559, 5.1.7) into a finished Matroska file, in room that was kept before the first cluster, and
 * names their place in the seek head.
 */
export function addMkvChapters(path: string, chapters: readonly CutChapter[]): void {
  const file = openSync(path, 'r+');
  try {
    const { head, segment, parts } = readHead(file);
    const made = chaptersElement(chapters);
    const seeks = parts.find(({ id }) => id === ids.seekHead);
    // The room right behind the seek head is for the seek head to grow.
    const rooms = parts.filter(({ id, start }) => id === voidId && start !== seeks?.end);
    const room = rooms.find(({ start, end }) => fits(made.length, end - start));
    if (!room) throw new Error('The cut has no room for its chapters');
    writeAt(file, filled(made, room), room.start);
    if (seeks) nameInSeekHead(file, head, { seeks, parts, place: room.start - segment.content });
  } finally {
    closeSync(file);
  }
}

export function readMkvChapters(path: string): CutChapter[] {
  const file = openSync(path, 'r');
  try {
    const { head, parts } = readHead(file);
    const found = parts.find(({ id }) => id === ids.chapters);
    return found ? atomsIn(head, found).map((atom) => readAtom(head, atom)) : [];
  } finally {
    closeSync(file);
  }
}

function chaptersElement(chapters: readonly CutChapter[]): Buffer {
  const atoms = chapters.map(({ startMs, title }, i) =>
    master(
      ids.atom,
      unsigned(ids.uid, i + 1),
      // Nanoseconds.
      unsigned(ids.start, startMs * 1_000_000),
      master(ids.display, text(ids.title, title), text(ids.language, 'und')),
    ),
  );
  return master(ids.chapters, master(ids.edition, ...atoms));
}

/** Whether something fits into a span with nothing left, or with enough left for a Void element. */
function fits(bytes: number, room: number): boolean {
  return room === bytes || room - bytes >= 2;
}

function filled(made: Buffer, { start, end }: Element): Buffer {
  const left = end - start - made.length;
  return left === 0 ? made : Buffer.concat([made, voidOf(left)]);
}

interface Head {
  /** The start of the file, up to the first cluster. */
  head: Buffer;
  segment: Element;
  /** Elements of the segment before the first cluster. */
  parts: Element[];
}

function readHead(file: number): Head {
  const head = readAt(file, 0, mostHeadBytes);
  const ebml = readElement(head, 0);
  const segment = ebml && readElement(head.subarray(ebml.end, ebml.end + 12), ebml.end);
  if (segment?.id !== ids.segment) throw new Error('The cut is no Matroska file');
  const parts = elementsIn(head, segment.content);
  return { head, segment, parts: parts.slice(0, clusterIn(parts)) };
}

function clusterIn(parts: readonly Element[]): number | undefined {
  const place = parts.findIndex(({ id }) => id === ids.cluster);
  return place < 0 ? undefined : place;
}

/** The seek head grows into the Void element that stands behind it. */
function nameInSeekHead(
  file: number,
  head: Buffer,
  { seeks, parts, place }: { seeks: Element; parts: readonly Element[]; place: number },
): void {
  const room = parts.find(({ id, start }) => id === voidId && start === seeks.end);
  if (!room) return;
  const idBytes = Buffer.alloc(4);
  idBytes.writeUInt32BE(ids.chapters);
  const entry = master(ids.seek, element(ids.seekId, idBytes), unsigned(ids.seekPosition, place));
  const fresh = master(ids.seekHead, head.subarray(seeks.content, seeks.end), entry);
  const span = { ...room, start: seeks.start };
  if (fits(fresh.length, span.end - span.start)) writeAt(file, filled(fresh, span), span.start);
}

function atomsIn(head: Buffer, { content, end }: Element): Element[] {
  const editions = elementsIn(head, content, end).filter(({ id }) => id === ids.edition);
  return editions.flatMap((edition) =>
    elementsIn(head, edition.content, edition.end).filter(({ id }) => id === ids.atom),
  );
}

function readAtom(head: Buffer, atom: Element): CutChapter {
  const parts = elementsIn(head, atom.content, atom.end);
  const start = parts.find(({ id }) => id === ids.start);
  const display = parts.find(({ id }) => id === ids.display);
  const title = display && elementsIn(head, display.content, display.end).find(({ id }) => id === ids.title);
  const nanoseconds = start ? BigInt(`0x${head.toString('hex', start.content, start.end) || '0'}`) : 0n;
  return {
    startMs: Number(nanoseconds / 1_000_000n),
    title: title ? head.toString('utf8', title.content, title.end) : '',
  };
}
