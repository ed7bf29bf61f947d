'use client';

import { useRef } from 'react';
import { z } from 'zod';
import { CallError } from '@/app/_parts/call';
import type { Claim } from '@/shared/claims';
import { useDesk } from '../_desk/use-record';
import type { WrittenClaim } from './claims-draft';
import { useKeep } from './use-keep';

const clashSchema = z.object({ now: z.record(z.string(), z.unknown()) });

/**
 * Keeps a new claim, or what was changed of one that stands. Where another window changed the same meanwhile it is
 * refused once, and the next attempt is made against what stands there by then.
 */
export function useKeepClaim(claim?: Claim): (wanted: WrittenClaim) => Promise<void> {
  const { instrument, job } = useDesk().record;
  const keep = useKeep();
  const seen = useRef<Record<string, unknown>>({ ...claim });
  return async (wanted) => {
    if (!claim) return keep('POST', `/api/instruments/${instrument.id}/claims`, { ...wanted, jobId: job.id });
    const changed = Object.entries(wanted).filter(([field, value]) => !isSame(seen.current[field], value));
    if (changed.length === 0) return;
    const was = Object.fromEntries(changed.map(([field]) => [field, seen.current[field] ?? null]));
    try {
      await keep('PATCH', `/api/claims/${claim.id}?job=${job.id}`, { ...Object.fromEntries(changed), was });
    } catch (error) {
      const clash = error instanceof CallError ? clashSchema.safeParse(error.problem) : null;
      seen.current = { ...seen.current, ...clash?.data?.now };
      throw error;
    }
  };
}

function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
}
