import { bullets } from './blocks';
import type { SectionMaker } from './making';
import { atTime } from './say';

export const chapters: SectionMaker = ({ facts, say, timeAt }) => {
  if (facts.chapters.length === 0) return null;
  return {
    blocks: [bullets(facts.chapters.map(({ startMs, title }) => atTime(timeAt(startMs), say(title))))],
  };
};
