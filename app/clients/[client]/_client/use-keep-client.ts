'use client';

import { useRouter } from 'next/navigation';
import { useCallback } from 'react';
import { z } from 'zod';
import { call } from '@/app/_parts/call';
import { useNotices } from '@/app/_parts/notices';
import { type ClientPatch, clientChangedSchema } from '@/shared/clients';
import type { ChangeId, ClientId } from '@/shared/ids';

/** Takes a change back, and shows what then stands. */
export function useTakeBack(): (change: ChangeId) => void {
  const router = useRouter();
  const { done, wrong } = useNotices();
  return useCallback(
    (change) => {
      const takeBack = async () => {
        await call('POST', `/api/changes/${change}/undo`, z.unknown());
        done('Taken back');
        router.refresh();
      };
      void takeBack().catch(wrong);
    },
    [router, done, wrong],
  );
}

/** Keeps fields of the entry, told what stood there before. Throws what the server refuses. */
export function useKeepClient(id: ClientId) {
  const router = useRouter();
  const { done } = useNotices();
  const takeBack = useTakeBack();
  return useCallback(
    async (patch: ClientPatch, was: NonNullable<ClientPatch['was']>, told: string) => {
      const { change } = await call('PATCH', `/api/clients/${id}`, clientChangedSchema, { ...patch, was });
      done(told, () => takeBack(change));
      router.refresh();
    },
    [id, router, done, takeBack],
  );
}
