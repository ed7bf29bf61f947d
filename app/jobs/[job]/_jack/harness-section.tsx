'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { arrangements, sayOhms, sketchHarness } from '@/lib/wiring';
import type { Harness } from '@/shared/jack';
import type { JackView } from '@/shared/jack-check';
import { draftOf, type HarnessDraft } from './draft';
import { HarnessForm } from './harness-form';
import styles from './jack.module.css';

interface HarnessSectionProps {
  view: JackView;
  onKeep: (harness: Harness) => Promise<boolean>;
  onRemove: () => void;
}

/** What the instrument has in it: described once, then told in a few lines. */
export function HarnessSection({ view, onKeep, onRemove }: HarnessSectionProps) {
  const [draft, setDraft] = useState<HarnessDraft | null>(null);
  const { harness } = view;
  return (
    <section className={styles.section} aria-labelledby="harness">
      <h2 id="harness">The harness</h2>
      {draft ? (
        <HarnessForm
          draft={draft}
          onDraft={setDraft}
          onLeave={() => setDraft(null)}
          onKeep={async (wanted) => {
            if (await onKeep(wanted)) setDraft(null);
          }}
        />
      ) : (
        <>
          {harness && <InWords harness={harness} />}
          {harness && (
            <div className={styles.row}>
              <Button onClick={() => setDraft(draftOf(harness))}>Change the harness</Button>
              <Button weight="alarm" onClick={onRemove}>
                Delete
              </Button>
            </div>
          )}
          {!harness && <Beginnings view={view} onBegin={setDraft} />}
        </>
      )}
    </section>
  );
}

/** Where a description begins: a few arrangements in plain words, with what the job has measured put in. */
function Beginnings({ view, onBegin }: { view: JackView; onBegin: (draft: HarnessDraft) => void }) {
  const { known, suggestion } = view;
  const usual = suggestion.pickups.length;
  return (
    <>
      <p>What does it have in it? Begin from the nearest; everything can be changed.</p>
      {known.length > 0 && (
        <p className={styles.fine}>
          Measured in this job:{' '}
          {known.map(({ subject, coils }) => `${subject} ${coils.map(sayCoil).join(' + ')}`).join('; ')}.
        </p>
      )}
      <ul className={styles.beginnings} aria-label="Arrangements">
        {arrangements.map(({ id, words, places }) => (
          <li key={id}>
            <Button
              className={styles.beginning ?? ''}
              onClick={() => onBegin(draftOf(sketchHarness(id, known)))}
            >
              {words}
              {known.length > 0 && places.length === usual && (
                <span className={styles.chip}>as many as measured</span>
              )}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

function sayCoil({ name, ohms }: { name: string; ohms: number }): string {
  return `${name} ${sayOhms(ohms)}`;
}

function InWords({ harness }: { harness: Harness }) {
  const { pickups, volumes, tones, positions, switches, resistors } = harness;
  const facts = [
    {
      what: 'Pickups',
      lines: pickups.map(
        ({ subject, coils, joined }) =>
          `${subject}: ${coils.map(sayCoil).join(' + ')}${coils.length > 1 ? `, ${joined}` : ''}`,
      ),
    },
    { what: 'Pots', lines: [...volumes, ...tones].map(({ name, ohms }) => `${name} ${sayOhms(ohms)}`) },
    {
      what: 'Positions',
      lines: positions.map(({ name, on, together }) => {
        const words = on.length === 0 ? 'off' : on.join(together === 'series' ? ' in series with ' : ' + ');
        return words === name ? name : `${name}: ${words}`;
      }),
    },
    { what: 'Switches', lines: switches.map(({ name }) => name) },
    { what: 'Fixed resistors', lines: resistors.map(({ name, ohms }) => `${name} ${sayOhms(ohms)}`) },
  ];
  return (
    <dl className={styles.facts}>
      {facts
        .filter(({ lines }) => lines.length > 0)
        .map(({ what, lines }) => (
          <div key={what}>
            <dt>{what}</dt>
            {lines.map((line) => (
              <dd key={line}>{line}</dd>
            ))}
          </div>
        ))}
    </dl>
  );
}
