'use client';

import { useRouter } from 'next/navigation';
import { useTransition } from 'react';
import { z } from 'zod';
import { Button } from './button';
import { call } from './call';
import { ProblemNote } from './problem-note';
import { useAttempt } from './use-attempt';

const answerSchema = z.object({ jobs: z.int() });

/** Loads the older demonstration jobs, so that there is something to ask the archive, and shows the page anew. */
export function OlderJobsButton() {
  const router = useRouter();
  const [going, startGoing] = useTransition();
  const { busy, problem, run } = useAttempt();
  const load = () =>
    run(async () => {
      await call('POST', '/api/demo/older', answerSchema);
      startGoing(() => router.refresh());
    });
  return (
    <>
      <Button aria-disabled={busy || going} onClick={() => going || void load()}>
        {busy || going ? 'Loading 28 older jobs …' : 'Load 28 older jobs to try the archive'}
      </Button>
      {problem !== null && <ProblemNote error={problem} />}
    </>
  );
}
