import { paragraph, words } from './blocks';
import type { Making, SectionMaker } from './making';
import { publicMarkers } from './on-film';
import { sayList } from './say';
import { toolWords } from './tool-words';

export const tools: SectionMaker = (making) => {
  const meters = metersRead(making);
  const worked = toolsNamed(making);
  const sentences = [
    ...(meters.length === 0 ? [] : [`I took the readings with: ${sayList(meters)}.`]),
    ...(worked.length === 0 ? [] : [`For the work I used: ${sayList(worked)}.`]),
  ];
  return sentences.length === 0 ? null : { blocks: [paragraph(words(sentences.join(' ')))] };
};

/** In the order in which they were first read. */
function metersRead({ facts, say }: Making): string[] {
  const { readings, meters } = facts.record;
  const ids = new Set(readings.map(({ meterId }) => meterId));
  return [...ids].flatMap((id) => {
    const meter = meters.find((candidate) => candidate.id === id);
    return meter ? [say(meter.name)] : [];
  });
}

/** What was wanted or found tells of no tool that was in hand. */
function toolsNamed(making: Making): string[] {
  const done = making.facts.record.work.filter(({ outcome }) => outcome === 'done').map(({ what }) => what);
  const shown = publicMarkers(making)
    .filter(({ kind }) => kind !== 'intake' && kind !== 'diagnosis')
    .flatMap(({ title, note }) => [title, note ?? '']);
  const told = [...done, ...shown].join('\n');
  return toolWords.filter(([, pattern]) => pattern.test(told)).map(([tool]) => tool);
}
