import type { Conclusion } from '@/shared/wiring';
import { concludeEnds } from './conclude-ends';
import { concludeKicks } from './conclude-kicks';
import { concludeWindings } from './conclude-windings';
import type { Model } from './model';
import { ofKind } from './model';
import { sayOhms } from './say';

/** All that follows, each conclusion once, in the order of its key. */
export function concludeAll(model: Model): Conclusion[] {
  const all = [
    ...concludeWindings(model),
    ...concludeEnds(model),
    ...concludeKicks(model),
    ...concludeTotals(model),
  ];
  const once = new Map<string, Conclusion>();
  for (const conclusion of all) if (!once.has(conclusion.key)) once.set(conclusion.key, conclusion);
  return [...once.values()].sort((x, y) => (x.key < y.key ? -1 : 1));
}

/** A total proves the total: it says nothing of which conductor is which. */
function concludeTotals({ trace }: Model): Conclusion[] {
  return ofKind(trace.readings, 'total').map((reading) => {
    const { id, basis, ohms } = reading;
    const value = ohms === null ? 'open' : sayOhms(ohms);
    return {
      key: `total:${id}`,
      kind: 'total',
      about: [],
      basis,
      text: `The whole pickup reads ${value} between hot and ground.`,
      because: 'It was read so after joining; it proves the total, not which conductor is which.',
      readings: [id],
      ...(ohms === null ? {} : { ohms }),
    };
  });
}
