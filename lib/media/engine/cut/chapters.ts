import type { CutChapter } from '@/shared/cut-engine';
import type { Container } from './container';
import { addMkvChapters, mkvChapterRoom, readMkvChapters } from './mkv-chapters';
import { addMp4Chapters, mp4ChapterRoom, readMp4Chapters } from './mp4-chapters';

/** How each container keeps chapters. `add` changes a finished file whose index has `room` to grow. */
export const chapterWriters: Readonly<
  Record<
    Container,
    {
      room(chapters: readonly CutChapter[]): number;
      add(path: string, chapters: readonly CutChapter[], durationMs: number): void;
      read(path: string): CutChapter[];
    }
  >
> = {
  mp4: { room: mp4ChapterRoom, add: addMp4Chapters, read: readMp4Chapters },
  mkv: { room: mkvChapterRoom, add: addMkvChapters, read: readMkvChapters },
};
