'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import { useId, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ChoiceField } from '@/app/_parts/field';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted, ticketNumber } from '@/app/_parts/words';
import { type BacklogId, type BacklogPlan, type JobRule, jobRules, type LeftOut } from '@/shared/backlog';
import styles from './backlog.module.css';
import { JobRow } from './job-row';
import { useChoices } from './use-choices';
import { ruleWords } from './words';

/** As many jobs are shown at once: a field for each of 2 000 would make the page slow. */
const shownAtOnce = 100;

interface PlanSheetProps {
  id: BacklogId;
  plan: BacklogPlan;
  rule: JobRule;
  onOrdered: () => void;
}

/** The second step: what the recordings would become, to be looked over and put right. */
export function PlanSheet({ id, plan, rule, onOrdered }: PlanSheetProps) {
  const head = useId();
  const router = useRouter();
  const choices = useChoices();
  const { busy, problem, run } = useAttempt();
  const wanted = plan.jobs.filter((job) => !choices.of(job).leftOut);
  const takes = wanted.reduce((sum, job) => sum + job.takes.filter((take) => !take.captionsOnly).length, 0);
  const order = () =>
    run(async () => {
      const told = { rule, choices: choices.made(plan.jobs) };
      await call('POST', `/api/archive/backlog/${id}/import`, z.unknown(), told);
      onOrdered();
    });
  return (
    <section className={styles.sheet} aria-labelledby={head}>
      <h2 id={head}>2. What they become</h2>
      <Found plan={plan} />
      {plan.jobs.length > 0 && (
        <>
          <div className={styles.rule}>
            <ChoiceField
              label="What becomes a job"
              hint="A named folder is one whose name has words of its own, such as “bass rewire”. Spread over more than 60 days it goes by day too."
              value={rule}
              onChange={(event) =>
                router.replace(`/archive/backlog?at=${id}&rule=${event.target.value}`, { scroll: false })
              }
            >
              {jobRules.map((each) => (
                <option key={each} value={each}>
                  {ruleWords[each]}
                </option>
              ))}
            </ChoiceField>
          </div>
          <Jobs plan={plan} choices={choices} />
          <p className={styles.soft}>
            They are entered as collected on their last day, without a client, and say that they come from
            older recordings. Are days wrong by a few hours? Set the folder’s camera clock in the{' '}
            <Link href="/settings">settings</Link>.
          </p>
          <div className={styles.line}>
            <Button weight="main" onClick={order} aria-disabled={busy || wanted.length === 0}>
              Import {counted(wanted.length, 'job')} with {counted(takes, 'take')}
            </Button>
          </div>
          {problem !== null && <ProblemNote error={problem} />}
        </>
      )}
      <Left title="cannot be read" files={plan.unreadable} />
      <Left title="left out: there already" files={plan.elsewhere} />
    </section>
  );
}

function Found({ plan: { jobs, known, elsewhere, unreadable } }: Pick<PlanSheetProps, 'plan'>) {
  const joins = jobs.filter(({ joins: job }) => job !== null).length;
  const fresh = jobs.filter(({ joins: job }) => job === null);
  const recordings = fresh.reduce((sum, { takes }) => sum + takes.length, 0);
  const told = [
    fresh.length > 0 ? `${counted(fresh.length, 'new job')} of ${counted(recordings, 'recording')}` : '',
    joins > 0 ? `more for ${counted(joins, 'job')} imported before` : '',
    known > 0 ? `${counted(known, 'recording')} in jobs already` : '',
    elsewhere.length > 0 ? `${counted(elsewhere.length, 'recording')} known by another name` : '',
    unreadable.length > 0 ? `${counted(unreadable.length, 'file')} that cannot be read` : '',
  ].filter(Boolean);
  const nothing =
    told.length === 0
      ? 'No recordings lie in this folder. Is it the right one? Folders inside it count too, hidden ones do not.'
      : 'Nothing in it is new.';
  return (
    <p role="status" className={styles.found}>
      {jobs.length === 0 ? `${nothing} ` : ''}
      {told.length > 0 ? `Found: ${told.join('; ')}.` : ''}
    </p>
  );
}

function Jobs({
  plan: { jobs },
  choices,
}: Pick<PlanSheetProps, 'plan'> & { choices: ReturnType<typeof useChoices> }) {
  const [shown, setShown] = useState(shownAtOnce);
  const out = jobs.filter((job) => choices.of(job).leftOut).length;
  return (
    <>
      <div className={styles.line}>
        <Button onClick={() => choices.all(jobs, out === 0)}>
          {out === 0 ? 'Leave all out' : 'Take all in'}
        </Button>
        <span className={styles.soft}>
          {out === 0 ? 'All are taken in.' : `${counted(out, 'job')} left out.`}
        </span>
      </div>
      <ol className={styles.jobs} aria-label="Proposed jobs">
        {jobs.slice(0, shown).map((job) => (
          <JobRow key={job.key} job={job} choice={choices.of(job)} onChange={choices.change} />
        ))}
      </ol>
      {shown < jobs.length && (
        <div className={styles.line}>
          <Button onClick={() => setShown(shown + shownAtOnce)}>Show more</Button>
          <span className={styles.soft}>
            {shown} of {jobs.length} shown; all of them are imported.
          </span>
        </div>
      )}
    </>
  );
}

function Left({ title, files }: { title: string; files: readonly LeftOut[] }) {
  if (files.length === 0) return null;
  return (
    <details>
      <summary>
        {counted(files.length, 'file')}: {title}
      </summary>
      <ul className={styles.files}>
        {files.map(({ path, why, job }) => (
          <li key={path}>
            <span className={styles.file}>{path}</span>
            <span className={styles.soft}>
              {why} {job && <Link href={`/jobs/${job.id}`}>Job {ticketNumber(job.number)}</Link>}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
