'use client';

import Link from 'next/link';
import { useEffect, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import type { Claim, NewClaim, SerialReading } from '@/shared/claims';
import { instrumentViewSchema } from '@/shared/jobs';
import { useDesk } from '../_desk/use-record';
import styles from './instrument.module.css';

/** What the repairer's own patterns make of the serial; each reading can be taken as a claim. */
export function SerialReadings() {
  const { instrument } = useDesk().record;
  const { readings, problem } = useSerialReadings(instrument.id, instrument.serial);
  if (problem !== null) return <ProblemNote error={problem} />;
  if (instrument.serial === null || readings === null) return null;
  if (readings.length === 0)
    return (
      <p className={styles.fine}>
        No pattern of yours fits this serial. Patterns are written down in the{' '}
        <Link href="/settings#serial-patterns">settings</Link>; none comes with Benchtake.
      </p>
    );
  return (
    <ul className={styles.readings} aria-label="What the serial tells">
      {readings.map((reading) => (
        <li key={reading.pattern}>
          <p>
            By “{reading.pattern}”: {reading.sentence}
          </p>
          <div className={styles.row}>
            {claimsIn(reading).map((claim) => (
              <TakeAsClaim key={claim.kind} claim={claim} />
            ))}
          </div>
        </li>
      ))}
    </ul>
  );
}

function TakeAsClaim({ claim }: { claim: NewClaim }) {
  const { record, change } = useDesk();
  const { instrument, job, claims } = record;
  const what = `the ${claim.kind} ${claim.value}`;
  const isTaken = claims.some((other) => isSameClaim(other, claim));
  const take = () =>
    change(
      'POST',
      `/api/instruments/${instrument.id}/claims`,
      { ...claim, jobId: job.id },
      z.looseObject({}),
      `Claimed: ${what}`,
    );
  return (
    <Button aria-disabled={isTaken} onClick={() => !isTaken && void take()}>
      {isTaken ? `Claimed: ${what}` : `Take ${what} as a claim`}
    </Button>
  );
}

function isSameClaim(a: Claim, b: NewClaim): boolean {
  return a.kind === b.kind && a.value === b.value && a.evidence === b.evidence;
}

/** More years than this are no claim: a year that ends in 4. */
const mostYears = 3;

/** What follows from a serial by a pattern is implied; where the century is open, it is open in the claim too. */
function claimsIn({ pattern, years, factory, sentence }: SerialReading): NewClaim[] {
  const evidence = `The serial by the pattern “${pattern}”: ${sentence}`;
  const told = { basis: 'implied', evidence } as const;
  const sure = years.length === 1 ? 'likely' : 'doubtful';
  return [
    ...(years.length > 0 && years.length <= mostYears
      ? [{ kind: 'year' as const, value: years.join(' or '), sure, ...told } as const]
      : []),
    ...(factory !== null ? [{ kind: 'factory', value: factory, sure: 'likely', ...told } as const] : []),
  ];
}

/** Asked of the server whenever the serial is another one. Null until they are there. */
function useSerialReadings(id: string, serial: string | null) {
  const [state, setState] = useState<{ readings: SerialReading[] | null; problem: unknown }>(nothingYet);
  useEffect(() => {
    if (serial === null) return;
    let isLeft = false;
    setState(nothingYet);
    call('GET', `/api/instruments/${id}`, instrumentViewSchema).then(
      ({ serialReadings }) => !isLeft && setState({ readings: serialReadings, problem: null }),
      (problem: unknown) => !isLeft && setState({ readings: null, problem }),
    );
    return () => {
      isLeft = true;
    };
  }, [id, serial]);
  return state;
}

const nothingYet = { readings: null, problem: null };
