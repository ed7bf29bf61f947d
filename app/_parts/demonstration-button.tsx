'use client';

import { useRouter } from 'next/navigation';
import { useTransition } from 'react';
import { z } from 'zod';
import { jobSchema } from '@/shared/jobs';
import { Button } from './button';
import { call } from './call';
import { ProblemNote } from './problem-note';
import { useAttempt } from './use-attempt';

const answerSchema = z.object({ job: jobSchema });

/** Loads the demonstration job, or finds the one loaded before, and goes to it. */
export function DemonstrationButton() {
  const router = useRouter();
  const [going, startGoing] = useTransition();
  const { busy, problem, run } = useAttempt();
  const load = () =>
    run(async () => {
      const { job } = await call('POST', '/api/demo', answerSchema);
      startGoing(() => router.push(`/jobs/${job.id}`));
    });
  return (
    <>
      <Button aria-disabled={busy || going} onClick={() => going || void load()}>
        {busy || going ? 'Loading the demonstration job …' : 'Load the demonstration job'}
      </Button>
      {problem !== null && <ProblemNote error={problem} />}
    </>
  );
}
