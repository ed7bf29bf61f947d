'use client';

import { useEffect, useMemo, useState } from 'react';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { folded, holdsEveryWord } from '@/app/_parts/words';
import { type Client, type ClientLine, clientLinesSchema } from '@/shared/clients';

/** Choices shown at once. */
const most = 8;

/** Other entries that hold the words, those with a like name first; null until they are loaded. */
export function useOtherClients(
  client: Client,
  find: string,
): { shown: readonly ClientLine[] | null; more: number } {
  const { wrong } = useNotices();
  const [all, setAll] = useState<readonly ClientLine[] | null>(null);
  useEffect(() => {
    const load = async () => setAll((await call('GET', '/api/clients', clientLinesSchema)).clients);
    void load().catch(wrong);
  }, [wrong]);
  return useMemo(() => {
    if (all === null) return { shown: null, more: 0 };
    const wanted = folded(find).trim();
    const found = all
      .filter((line) => line.id !== client.id && holdsEveryWord(textOf(line), wanted))
      .sort((a, b) => alike(b, client) - alike(a, client));
    return { shown: found.slice(0, most), more: Math.max(0, found.length - most) };
  }, [all, client, find]);
}

/** Words that the two names share. */
function alike({ name }: ClientLine, client: Client): number {
  const words = new Set(wordsOf(client.name));
  return wordsOf(name).filter((word) => words.has(word)).length;
}

const wordsOf = (name: string) =>
  folded(name)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

const textOf = ({ name, alias, reach }: ClientLine) => folded([name, alias, reach].filter(Boolean).join(' '));
