'use client';

import { useRouter } from 'next/navigation';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import type { Client } from '@/shared/clients';
import { changeIdSchema } from '@/shared/ids';
import { useTakeBack } from './use-keep-client';

const goneSchema = z.object({ change: changeIdSchema });

/** Takes the entry off and goes to the other clients, with a way back. */
export function useTakeOff({ id, name }: Client): () => Promise<void> {
  const router = useRouter();
  const { done, wrong } = useNotices();
  const takeBack = useTakeBack();
  return async () => {
    try {
      const { change } = await call('DELETE', `/api/clients/${id}`, goneSchema);
      done(`${name} taken off`, () => takeBack(change));
      router.push('/clients');
    } catch (error) {
      wrong(error);
    }
  };
}
