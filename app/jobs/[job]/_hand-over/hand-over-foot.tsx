'use client';

import { buttonClass } from '@/app/_parts/button';
import { useDesk } from '../_desk/use-record';
import styles from './hand-over.module.css';
import { Section } from './section';

/** The whole job as one file, for another machine or for keeping. */
export function HandOverFoot() {
  const { job } = useDesk().record;
  const address = `/api/jobs/${job.id}/bundle?recordings=`;
  return (
    <Section id="bundle" title="Save the job as a bundle">
      <p className={styles.fine}>
        One ZIP with the record, tables, documents and stills, to keep or to open on another machine. It is
        not for the public: it holds the client’s name.
      </p>
      <div className={styles.row}>
        <a className={buttonClass()} href={`${address}none`} download>
          Without recordings
        </a>
        <a className={buttonClass()} href={`${address}all`} download>
          With all recordings
        </a>
      </div>
    </Section>
  );
}
