import { folded } from '@/app/_parts/words';
import type { Asked } from './asked';

/** Ids of the parts that were taken away. */
export function takenAway({ without }: Pick<Asked, 'without'>): string[] {
  return without.split(',').filter((id) => id !== '');
}

export function takeAway(asked: Asked, id: string): Asked {
  return { ...asked, without: [...new Set([...takenAway(asked), id])].join(',') };
}

export function putBack(asked: Asked, id: string): Asked {
  return {
    ...asked,
    without: takenAway(asked)
      .filter((other) => other !== id)
      .join(','),
  };
}

/** The words a part was read from, as its id still tells them: "time-last-spring" is "last spring". */
export function saidIn(id: string): string {
  return id
    .replace(/^[a-z]+-/, '')
    .replace(/~\d+$/, '')
    .replaceAll('-', ' ');
}

/** The question with other words. A part that was taken away stays so only while its words are still there. */
export function withWords(asked: Asked, q: string): Asked {
  const said = plain(q);
  const without = takenAway(asked).filter((id) => said.includes(saidIn(id)));
  return { ...asked, q, without: without.join(',') };
}

function plain(text: string): string {
  return folded(text).replace(/[^\p{L}\p{N}]+/gu, ' ');
}
