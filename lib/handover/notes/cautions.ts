import { told, words } from './blocks';
import type { SectionMaker } from './making';

export const cautions: SectionMaker = ({ facts, say }) => {
  const blocks = told(
    'If you do such work yourself, take care:',
    facts.cautions.map((caution) => [words(say(caution))]),
  );
  return blocks.length === 0 ? null : { blocks };
};
