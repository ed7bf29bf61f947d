'use client';

import { useEffect, useState } from 'react';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type ClientLine, clientLinesSchema } from '@/shared/clients';

/** How long the typing must rest before the server is asked. */
const restMs = 120;

/** Known clients in whom the words are found, as they are typed. */
export function useClients(find: string): readonly ClientLine[] {
  const { wrong } = useNotices();
  const [clients, setClients] = useState<readonly ClientLine[]>([]);
  useEffect(() => {
    let overtaken = false;
    const ask = async () => {
      const found = await call('GET', `/api/clients?find=${encodeURIComponent(find)}`, clientLinesSchema);
      if (!overtaken) setClients(found.clients);
    };
    const waiting = window.setTimeout(() => void ask().catch(wrong), restMs);
    return () => {
      overtaken = true;
      window.clearTimeout(waiting);
    };
  }, [find, wrong]);
  return clients;
}
