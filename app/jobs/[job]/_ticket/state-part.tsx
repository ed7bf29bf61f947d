'use client';

import { useState } from 'react';
import { z } from 'zod';
import { CallError } from '@/app/_parts/call';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { type JobState, jobStateSchema, jobStates } from '@/shared/jobs';
import { type LooseEnd, looseEndSchema } from '@/shared/loose-ends';
import { useDesk } from '../_desk/use-record';
import { type HeldBack, LookFirst } from './look-first';
import { ReadyLookNote } from './ready-look';
import { usePatchJob } from './use-keep';

/** How far the job is. Loose ends hold it back until they were looked at. */
export function StatePart() {
  const { job } = useDesk().record;
  const patch = usePatchJob();
  const [held, setHeld] = useState<HeldBack | null>(null);
  const setState = async (state: JobState, was: JobState, lookedAt?: readonly string[]) => {
    try {
      await patch({ state }, { state: was }, lookedAt);
      setHeld(null);
    } catch (error) {
      const looseEnds = looseEndsIn(error);
      if (!looseEnds) throw error;
      setHeld({ state, was, looseEnds });
    }
  };
  return (
    <>
      <KeptChoice
        label="State"
        name="state"
        schema={jobStateSchema}
        options={jobStates}
        value={job.state}
        onKeep={(state, was) => setState(state, was)}
      />
      {job.readyLook && <ReadyLookNote look={job.readyLook} />}
      <LookFirst
        held={held}
        onClose={() => setHeld(null)}
        onAllTheSame={({ state, was, looseEnds }) =>
          setState(
            state,
            was,
            looseEnds.map(({ id }) => id),
          )
        }
      />
    </>
  );
}

const heldSchema = z.object({ looseEnds: z.array(looseEndSchema) });

function looseEndsIn(error: unknown): readonly LooseEnd[] | null {
  const held = error instanceof CallError ? heldSchema.safeParse(error.problem) : null;
  return held?.data?.looseEnds ?? null;
}
