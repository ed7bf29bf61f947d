'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { KeyHint } from '@/app/_parts/key-hint';
import { filmTimeOf, layOut, shortTime } from '@/lib/film';
import { sayHeard } from '@/lib/narration';
import type { Proposal } from '@/shared/narration-record';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import styles from '../_sheet/sheet.module.css';
import type { SheetLine } from '../_sheet/sheet-lines';
import { ProposalChange } from './proposal-change';
import { useNarrationChanges } from './use-narration';

interface ProposalLineProps {
  line: SheetLine & { type: 'proposal' };
  selected: boolean;
  /** Opened for a change by its key. */
  changing: boolean;
  onSelect: (line: SheetLine) => void;
  onChange: (id: string | null) => void;
  onDecided: (line: SheetLine) => void;
}

const typeWords: Record<Proposal['heard']['type'], string> = {
  marker: 'marker',
  reading: 'reading',
  'coil-pair': 'coil',
  role: 'role',
  joint: 'joint',
  work: 'work',
  private: 'private',
  'camera-stop': 'camera stop',
};

/** Something heard, in the margin at its moment, with what it would record. Nothing is recorded until it is accepted. */
export function ProposalLine({ line, selected, changing, onSelect, onChange, onDecided }: ProposalLineProps) {
  const { proposal } = line;
  const { heard, decision } = proposal;
  const { decide } = useNarrationChanges();
  const [busy, setBusy] = useState(false);
  const settle = async (how: 'accept' | 'dismiss', payload?: Record<string, unknown>) => {
    setBusy(true);
    const decided = await decide(proposal, how, payload);
    setBusy(false);
    if (decided) onDecided(line);
  };
  if (decision === 'accepted') {
    return (
      <div className={styles.reading}>
        <button type="button" className={styles.readingRow} onClick={() => onSelect(line)}>
          <span className={styles.tag}>said</span>
          <span className={styles.subject}>{sayHeard(heard)}</span>
        </button>
        {selected && <p className={styles.fine}>Heard: “{heard.words}”</p>}
      </div>
    );
  }
  return (
    <div className={styles.proposal}>
      <button type="button" className={styles.readingRow} onClick={() => onSelect(line)}>
        <span className={styles.proposalType}>{typeWords[heard.type]}?</span>
        <span className={styles.subject}>{sayHeard(heard)}</span>
      </button>
      {selected && (
        <>
          <p className={styles.fine}>
            Heard: “{heard.words}” ·{' '}
            {heard.confidence >= 0.8 ? 'clearly' : heard.confidence >= 0.5 ? 'fairly clearly' : 'barely'}
          </p>
          <PromiseEnd proposal={proposal} />
          {changing ? (
            <ProposalChange
              heard={heard}
              onCancel={() => onChange(null)}
              onAccept={(payload) => void settle('accept', payload)}
            />
          ) : (
            <div className={styles.tools}>
              <Button weight="main" disabled={busy} onClick={() => void settle('accept')}>
                Accept <KeyHint>A</KeyHint>
              </Button>
              <Button disabled={busy} onClick={() => void settle('dismiss')}>
                Dismiss <KeyHint>X</KeyHint>
              </Button>
              <Button disabled={busy} onClick={() => onChange(proposal.id)}>
                Change <KeyHint>E</KeyHint>
              </Button>
            </div>
          )}
        </>
      )}
    </div>
  );
}

/** The other end of a promise: where it was made, or that it was never heard of again. */
function PromiseEnd({ proposal }: { proposal: Proposal }) {
  const player = usePlayer();
  const { record } = useDesk();
  const { heard, promisedAt } = proposal;
  if (promisedAt) {
    const at = filmTimeOf(layOut(record.takes), promisedAt);
    return at ? (
      <p>
        <Button onClick={() => player?.seek(at.filmMs)}>
          Promised at <span className="figures">{shortTime(at.filmMs)}</span>
        </Button>
      </p>
    ) : null;
  }
  const isForgotten = heard.type === 'work' && heard.payload.unheardUntil !== null;
  return isForgotten ? <p className={styles.fine}>Not heard of again to the end of the film.</p> : null;
}
