'use client';

import { useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { ChoiceField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { proposalTypes } from '@/shared/narration';
import { type Imported, importedSchema } from '@/shared/narration-record';
import deskStyles from '../_desk/desk.module.css';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { Listen } from './listen';
import { useListening } from './use-listening';
import { useHeard, useNarrationChanges } from './use-narration';

/** Words in: captions files, by dropping or choosing; and what was heard, kind by kind. */
export function NarrationSheet({ open, onClose }: { open: boolean; onClose: () => void }) {
  // Kept up here: it goes on, and is told of, when the sheet is put away.
  const listening = useListening();
  return (
    <Dialog open={open} onClose={onClose} title="Narration">
      <CaptionsIn />
      <Listen listening={listening} />
      <Shift />
      <Kinds />
    </Dialog>
  );
}

function CaptionsIn() {
  const { record, refresh } = useDesk();
  const { done } = useNotices();
  const [target, setTarget] = useState('film');
  const [problem, setProblem] = useState<unknown>(null);
  const [last, setLast] = useState<Imported | null>(null);
  const picker = useRef<HTMLInputElement>(null);
  const take = async (file: File | undefined) => {
    if (!file) return;
    setProblem(null);
    const path =
      target === 'film' ? `/api/jobs/${record.job.id}/narration` : `/api/takes/${target}/narration`;
    try {
      const imported = await call(
        'POST',
        `${path}?name=${encodeURIComponent(file.name)}`,
        importedSchema,
        file,
      );
      setLast(imported);
      done(`${imported.lines} lines put in, ${imported.proposed} proposals`);
      await refresh();
    } catch (error) {
      setProblem(error);
    }
  };
  return (
    <section className={deskStyles.narrationIn}>
      <ChoiceField
        label="Captions of"
        value={target}
        onChange={(event) => setTarget(event.currentTarget.value)}
      >
        <option value="film">the whole film</option>
        {record.takes.map((each, index) => (
          <option key={each.id} value={each.id}>
            take {index + 1}: {each.name}
          </option>
        ))}
      </ChoiceField>
      <button
        type="button"
        className={deskStyles.dropPlace}
        onClick={() => picker.current?.click()}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          event.preventDefault();
          void take(event.dataTransfer.files[0]);
        }}
      >
        Drop a captions file here, or touch to choose one: WebVTT, SubRip, or plain lines such as “[1:05]
        words”.
      </button>
      <input
        ref={picker}
        type="file"
        className="only-read"
        tabIndex={-1}
        aria-label="Captions file"
        accept=".vtt,.srt,.txt,text/*"
        onChange={(event) => {
          void take(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
      {problem !== null && <ProblemNote error={problem} />}
      {last && (last.unread.length > 0 || last.outside > 0) && (
        <p className={deskStyles.fine}>
          {last.unread.length > 0 &&
            `${last.unread.length} lines of the file could not be read, the first is line ${last.unread[0]?.line}. `}
          {last.outside > 0 && `${last.outside} lines fall on no take.`}
        </p>
      )}
    </section>
  );
}

/** Captions that run early or late: moved by ear on the sheet, by steps here. */
function Shift() {
  const { lines } = useHeard();
  const { shift, remove } = useNarrationChanges();
  const player = usePlayer();
  const here = player?.moment ?? null;
  if (lines.length === 0 || !here) return null;
  return (
    <section className={deskStyles.narrationIn}>
      <p className={deskStyles.fine}>
        This take’s words run early or late? Select a spoken line on the sheet, play, and press <kbd>H</kbd>{' '}
        on the word; or move them by steps.
      </p>
      <div className={deskStyles.row}>
        {[-500, -100, 100, 500].map((byMs) => (
          <Button key={byMs} onClick={() => void shift(here.takeId, byMs)}>
            {byMs > 0 ? '+' : '−'}
            {Math.abs(byMs) / 1000} s
          </Button>
        ))}
        <Button weight="alarm" onClick={() => void remove(here.takeId)}>
          Delete this take’s narration
        </Button>
      </div>
    </section>
  );
}

/** Open proposals by kind; all of a kind can be accepted after looking. */
function Kinds() {
  const { proposals } = useHeard();
  const { decideAll } = useNarrationChanges();
  const open = proposalTypes
    .map((type) => ({
      type,
      count: proposals.filter((proposal) => proposal.decision === 'open' && proposal.heard.type === type)
        .length,
    }))
    .filter(({ count }) => count > 0);
  if (open.length === 0)
    return (
      <p className={deskStyles.fine}>No proposal waits. They stand on the running sheet at their moments.</p>
    );
  return (
    <ul className={deskStyles.takes}>
      {open.map(({ type, count }) => (
        <li key={type} className={deskStyles.kindRow}>
          <span>
            {count} × {type}
          </span>
          <Button onClick={() => void decideAll(type, 'accept')}>Accept all</Button>
          <Button onClick={() => void decideAll(type, 'dismiss')}>Dismiss all</Button>
        </li>
      ))}
    </ul>
  );
}
