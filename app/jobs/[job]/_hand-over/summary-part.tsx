'use client';

import { buttonClass } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { summaryPaperSchema, summaryPapers } from '@/shared/summary';
import { useDesk } from '../_desk/use-record';
import styles from './hand-over.module.css';
import { Section, Step } from './section';
import { StillChoice } from './still-choice';
import { useHandOver } from './use-hand-over';

const mostWords = 4000;
const paperWords = { a4: 'A4', letter: 'Letter' };

/** The client summary: what is typed for it; everything else comes from the record. */
export function SummaryPart() {
  const { view, keepSummary } = useHandOver();
  const { kept, usualAftercare } = view.summary;
  const { job } = useDesk().record;
  return (
    <Section id="summary" title="Client summary">
      <p className={styles.fine}>For the client, not for the public: it may name them.</p>
      <a
        className={`${buttonClass('main')} ${styles.remove}`}
        href={`/api/jobs/${job.id}/exports/summary?paper=${kept.paper}`}
        target="_blank"
        rel="noreferrer"
      >
        Open the PDF <span className="only-read">(opens a new tab)</span>
      </a>
      <KeptChoice
        label="Paper"
        name="paper"
        schema={summaryPaperSchema}
        options={summaryPapers}
        words={paperWords}
        value={kept.paper}
        onKeep={(paper, was) => keepSummary({ paper }, { paper: was }, `Printed on ${paperWords[paper]}`)}
      />
      <KeptField
        label="Greeting"
        hint="Stands before the facts; empty for none."
        name="greeting"
        rows={3}
        maxLength={mostWords}
        value={kept.greeting}
        onKeep={(greeting, was) => keepSummary({ greeting }, { greeting: was }, 'Greeting kept')}
      />
      <KeptField
        label="What to look after"
        hint="A line for each thing. Empty: what is usual after this work, as below."
        name="aftercare"
        rows={4}
        maxLength={mostWords}
        value={kept.aftercare ?? ''}
        onKeep={(aftercare, was) =>
          keepSummary({ aftercare: aftercare || null }, { aftercare: was || null }, 'Aftercare kept')
        }
      />
      {kept.aftercare === null && <Usual text={usualAftercare} />}
      <KeptField
        label="Closing words"
        hint="Stand after all else; empty for none."
        name="closing"
        rows={3}
        maxLength={mostWords}
        value={kept.closing}
        onKeep={(closing, was) => keepSummary({ closing }, { closing: was }, 'Closing words kept')}
      />
      <Step id="summary-stills" title="Stills from the film">
        <StillChoice />
      </Step>
    </Section>
  );
}

function Usual({ text }: { text: string }) {
  if (text === '') return <p className={styles.fine}>Nothing is usual after this work.</p>;
  return (
    <div className={styles.usual}>
      <p className={styles.fine}>As usual:</p>
      <p className={styles.asWritten}>{text}</p>
    </div>
  );
}
