'use client';

import Link from 'next/link';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { addressOf } from '@/app/_parts/places';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { counted } from '@/app/_parts/words';
import { filmTimeOf, layOut, shortTime } from '@/lib/film';
import type { Finding, PublicDocument } from '@/shared/cut';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { stayAt } from '../_ticket/use-anchor';
import styles from './hand-over.module.css';
import { Section } from './section';
import { useHandOver } from './use-hand-over';

const documentWords: Record<PublicDocument, string> = {
  chapters: 'chapter list',
  notes: 'episode notes',
  cut: 'public cut',
};

/** Leads to a place on this page. */
type GoTo = (anchor: string) => void;

/** Private words that would go public, each to be decided, and the loose ends of the job. */
export function InTheWay({ onAnchor }: { onAnchor: GoTo }) {
  const { record } = useDesk();
  const { findings } = useHandOver().view.cut;
  const open = findings.filter(({ decision }) => decision === 'open');
  const decided = findings.filter(({ decision }) => decision !== 'open');
  const loose = record.looseEnds.length;
  return (
    <Section id="in-the-way" title="What stands in the way">
      {open.length === 0 ? (
        <p className={styles.fine}>
          {decided.length === 0
            ? 'Nothing private was found in what would go public.'
            : 'All that is private was decided.'}
        </p>
      ) : (
        <ul className={styles.findings} aria-label="To be decided">
          {open.map((finding) => (
            <FindingLine key={finding.id} finding={finding} onAnchor={onAnchor} />
          ))}
        </ul>
      )}
      <MuteAll open={open} />
      {decided.length > 0 && (
        <details className={styles.more}>
          <summary>{counted(decided.length, 'finding')} decided</summary>
          <ul className={styles.findings} aria-label="Decided">
            {decided.map((finding) => (
              <FindingLine key={finding.id} finding={finding} onAnchor={onAnchor} />
            ))}
          </ul>
        </details>
      )}
      {loose > 0 && (
        <p>
          <Link href={`/jobs/${record.job.id}/ticket#loose-ends`} className={styles.way}>
            {counted(loose, 'loose end')} on the ticket
          </Link>
        </p>
      )}
    </Section>
  );
}

/** Everything that was heard at once: it can be taken back as one step. */
function MuteAll({ open }: { open: readonly Finding[] }) {
  const { record, change } = useDesk();
  const count = open.filter(({ what }) => what === 'spoken').length;
  if (count < 2) return null;
  const mute = async (button: HTMLElement) => {
    const section = button.closest('section');
    const told = 'All heard private words muted in the cut';
    const decision = { type: 'private', decision: 'accept' };
    if (await change('POST', `/api/jobs/${record.job.id}/proposals`, decision, z.looseObject({}), told))
      stayAt(section);
  };
  return (
    <div>
      <Button onClick={(event) => void mute(event.currentTarget)}>
        Mute all {counted(count, 'heard finding')}
      </Button>
    </div>
  );
}

const decisionWords: Record<Finding['what'], Record<Finding['decision'], string>> = {
  spoken: { open: 'To be decided', 'held back': 'Muted in the cut', allowed: 'Left in on purpose' },
  written: { open: 'To be decided', 'held back': 'Held back', allowed: 'Allowed on purpose' },
};

interface Choice {
  decision: Finding['decision'];
  label: string;
  told: string;
}
const again: Choice = { decision: 'open', label: 'Decide again', told: 'To be decided again' };
const choices: Record<Finding['what'], readonly Choice[]> = {
  spoken: [
    { decision: 'held back', label: 'Mute', told: 'Muted in the cut' },
    { decision: 'allowed', label: 'Leave it in', told: 'Left in on purpose' },
    again,
  ],
  written: [{ decision: 'allowed', label: 'Allow on purpose', told: 'Allowed on purpose' }, again],
};

function FindingLine({ finding, onAnchor }: { finding: Finding; onAnchor: GoTo }) {
  const { decide } = useHandOver();
  const { busy, problem, run } = useAttempt();
  const { what, decision, sentence, words, documents } = finding;
  const choose = (choice: Choice, button: HTMLElement) =>
    run(async () => {
      const line = button.closest('li');
      const neighbour = line?.nextElementSibling ?? line?.previousElementSibling;
      await decide(finding, choice.decision, `${choice.told}: ${words}`);
      stayAt(neighbour?.querySelector('button, a') ?? document.getElementById('in-the-way'));
    });
  return (
    <li className={styles.finding} data-decision={decision} tabIndex={-1}>
      <p>
        <strong>{decisionWords[what][decision]}.</strong> {sentence}{' '}
        <span className={styles.fine}>{documents.map((name) => documentWords[name]).join(', ')}</span>
      </p>
      <div className={styles.row}>
        <WayThere finding={finding} onAnchor={onAnchor} />
        {choices[what]
          .filter((choice) => choice.decision !== decision)
          .map((choice) => (
            <Button
              key={choice.decision}
              aria-disabled={busy}
              aria-label={`${choice.label}: ${words}`}
              onClick={(event) => void choose(choice, event.currentTarget)}
            >
              {choice.label}
            </Button>
          ))}
      </div>
      {problem !== null && <ProblemNote error={problem} />}
    </li>
  );
}

/** To where the words stand: a moment of the film and a part of this page are reached without leaving it. */
function WayThere({ finding: { place, words }, onAnchor }: { finding: Finding; onAnchor: GoTo }) {
  const { record } = useDesk();
  const player = usePlayer();
  const label = `Go there: ${words}`;
  if (place.on === 'film') {
    const at = filmTimeOf(layOut(record.takes), place.moment);
    return (
      <Button disabled={!at} aria-label={label} onClick={() => at && player?.seek(at.filmMs)}>
        Go to {at ? shortTime(at.filmMs) : 'its moment'}
      </Button>
    );
  }
  if (place.on === 'hand-over')
    return (
      <Button aria-label={label} onClick={() => onAnchor(place.anchor)}>
        Go there
      </Button>
    );
  return (
    <Link href={addressOf(record.job.id, place)} className={styles.way} aria-label={label}>
      Go there
    </Link>
  );
}
