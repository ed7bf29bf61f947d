import Link from 'next/link';
import { ButtonLink } from '@/app/_parts/button';
import { DemonstrationButton } from '@/app/_parts/demonstration-button';
import { OlderJobsButton } from '@/app/_parts/older-jobs-button';
import { type Asked, pageOf } from './asked';
import styles from './start.module.css';

const examples = [
  'how did I trace that four-conductor last spring',
  '8.1k neck',
  'hum that went away with a ground lead',
  'action between 1.5 and 2 mm',
  'crackly volume pot this year',
  'offered but not done',
] as const;

/** What can be asked, shown by questions as they are typed at a bench. */
export function Examples({ onAsk }: { onAsk: (change: (now: Asked) => Asked) => void }) {
  return (
    <section className={styles.sheet} aria-labelledby="examples">
      <h2 id="examples">Such as</h2>
      <ul className={styles.examples}>
        {examples.map((q) => (
          <li key={q}>
            <Link
              href={pageOf(new URLSearchParams({ q }).toString())}
              prefetch={false}
              className={styles.example}
              onClick={(event) => {
                if (event.ctrlKey || event.metaKey || event.shiftKey) return;
                event.preventDefault();
                onAsk((now) => ({ ...now, q, without: '' }));
              }}
            >
              {q}
            </Link>
          </li>
        ))}
      </ul>
      <p className={styles.soft}>
        Words, word forms and the trade’s other names for them; days and seasons; values with their units;
        instruments, kinds of marker, clients. How it was understood is shown, and each part of it can be
        taken away.
      </p>
    </section>
  );
}

/** Nothing is in the archive yet. */
export function EmptyArchive() {
  return (
    <section className={styles.sheet} aria-labelledby="empty">
      <h2 id="empty">Nothing is in the archive yet.</h2>
      <p>
        Every job comes into it by itself, as it is filmed and written down: markers, readings, joints, what
        was said.
      </p>
      <div className={styles.ways}>
        <ButtonLink href="/" weight="main">
          Book in a job
        </ButtonLink>
        <ButtonLink href="/archive/backlog">Import older recordings</ButtonLink>
      </div>
      <p>Nothing filmed yet? Invented jobs show how it goes: one with three short takes, and older ones.</p>
      <div className={styles.ways}>
        <DemonstrationButton />
        <OlderJobsButton />
      </div>
    </section>
  );
}
