import { type PrivateWords, privateWordsFor } from '@/lib/narration';
import { folded } from '@/lib/work';
import type { Client } from '@/shared/clients';
import type { Instrument } from '@/shared/jobs';
import { everywhere, overlap } from './spans';

/** What of a job's record no public text may hold. A job record is one. */
export interface PrivateRecord {
  readonly client: Pick<Client, 'name' | 'alias' | 'reach'> | null;
  readonly instrument: Pick<Instrument, 'serial'>;
}

type Find = (text: string) => PrivateWords[];

/** What the ticket knows and what the rules find, and the serial written together with other letters. */
export function finderFor({ client, instrument }: PrivateRecord): Find {
  const { serial } = instrument;
  const find = privateWordsFor({ clientName: client?.name ?? null, reach: client?.reach ?? null, serial });
  return (text) => {
    const found = find(text);
    const clinging = clingingSerials(text, serial).filter(
      (span) => !found.some((other) => overlap(span, other)),
    );
    return [...found, ...clinging].sort((a, b) => a.from - b.from);
  };
}

/** What is found only because the ticket tells it. */
export function knownFinderFor(record: PrivateRecord): Find {
  const known = finderFor(record);
  return (text) => {
    const others = privateWordsFor({ clientName: null, reach: null, serial: null })(text);
    return known(text).filter((finding) => !others.some((other) => overlap(finding, other)));
  };
}

/** The words of a name, plain; single letters tell nothing. */
export function wordsOfName(name: string): string[] {
  return folded(name).match(/\p{L}{2,}/gu) ?? [];
}

/** Tells whether a name that was found is the client's: a word of it, or found by knowing the client alone. */
export function clientTellerFor({
  client,
}: PrivateRecord): (text: string) => (finding: PrivateWords) => boolean {
  const named = client && { ...client, reach: null };
  const findKnown = knownFinderFor({ client: named, instrument: { serial: null } });
  const parts = new Set(wordsOfName(client?.name ?? ''));
  return (text) => {
    const known = findKnown(text);
    return (finding) =>
      finding.reason === 'name' &&
      (wordsOfName(finding.words).some((word) => parts.has(word)) ||
        known.some((other) => overlap(other, finding)));
  };
}

const shortestClinging = 5;

/** "SN40417283", "40417283b". Among other digits it is another number. */
function clingingSerials(text: string, serial: string | null): PrivateWords[] {
  const whole = serial?.trim() ?? '';
  if (whole.length < shortestClinging || !/\p{N}/u.test(whole)) return [];
  return everywhere(text, whole)
    .filter(({ from, to }) => !/\p{N}$/u.test(text.slice(0, from)) && !/^\p{N}/u.test(text.slice(to)))
    .map((span) => ({ ...span, reason: 'serial', words: text.slice(span.from, span.to) }));
}
