import type { charges, deeds, oldPartFates, origins, partSources, workOutcomes } from '@/shared/work';

type Words<T extends readonly string[]> = Readonly<Record<T[number], string>>;

export const originWords: Words<typeof origins> = { asked: 'asked for', offered: 'offered', found: 'found' };
export const chargeWords: Words<typeof charges> = {
  agreed: 'agreed price',
  reduced: 'reduced price',
  free: 'free',
};
export const outcomeWords: Words<typeof workOutcomes> = {
  open: 'open',
  done: 'done',
  'not done': 'not done',
  declined: 'declined',
};
export const deedWords: Words<typeof deeds> = { fitted: 'fitted', removed: 'removed', reused: 'reused' };
export const sourceWords: Words<typeof partSources> = {
  stock: 'from stock',
  client: 'from the client',
  instrument: 'out of the instrument',
};
export const fateWords: Words<typeof oldPartFates> = { returned: 'returned', kept: 'kept here' };
