'use client';

import { ButtonLink } from '@/app/_parts/button';
import { useDesk } from '../_desk/use-record';
import styles from './sheet.module.css';
import type { SheetLine } from './sheet-lines';

interface JointLineProps {
  line: SheetLine & { type: 'joint' };
  selected: boolean;
  onSelect: (line: SheetLine) => void;
}

/** What was joined, at the moment of the joint. */
export function JointLine({ line, selected, onSelect }: JointLineProps) {
  const { record } = useDesk();
  const { outcome, traceId } = line.joint;
  return (
    <div className={styles.reading}>
      <button type="button" className={styles.readingRow} onClick={() => onSelect(line)}>
        <span className={styles.value}>joined</span>
        <span className={styles.subject}>
          {outcome.subject}, {outcome.title.toLowerCase()}:{' '}
          {outcome.lines.map((entry) => `${entry.role} ${entry.ends.join(' + ')}`).join(' · ')}
        </span>
        {outcome.basis !== 'measured' && <span className={styles.tag}>{outcome.basis}</span>}
      </button>
      {selected && (
        <div className={styles.tools}>
          <ButtonLink href={`/jobs/${record.job.id}/trace/${traceId}`}>Open the trace</ButtonLink>
        </div>
      )}
    </div>
  );
}
