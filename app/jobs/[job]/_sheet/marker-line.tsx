'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { exactTime } from '@/lib/film';
import { markerKinds } from '@/shared/markers';
import { useMarkerChanges } from '../_desk/use-marker-changes';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { SaveLine } from './save-line';
import styles from './sheet.module.css';
import type { SheetLine } from './sheet-lines';

type Line = SheetLine & { type: 'marker' };

interface MarkerLineProps {
  line: Line;
  selected: boolean;
  writing: boolean;
  onSelect: (line: SheetLine) => void;
  onWrite: (id: string | null) => void;
}

/** A marker as a section head of the sheet; selected, with what can be done to it. */
export function MarkerLine({ line, selected, writing, onSelect, onWrite }: MarkerLineProps) {
  const { marker } = line;
  return (
    <div className={styles.head} data-kind={marker.kind}>
      <div className={styles.headRow}>
        <MarkerShape kind={marker.kind} size={20} />
        <span className={styles.kind}>{markerWords[marker.kind]}</span>
        {writing ? (
          <TitleInput line={line} onDone={() => onWrite(null)} />
        ) : (
          <button
            type="button"
            className={styles.title}
            onClick={() => (selected ? onWrite(marker.id) : onSelect(line))}
          >
            {marker.title}
          </button>
        )}
        {!marker.public && <span className={styles.tag}>not a chapter</span>}
        {!line.shown && <span className={styles.tag}>cut off by the take’s trim</span>}
      </div>
      {selected && <MarkerTools line={line} onWrite={onWrite} />}
      {selected && <SaveLine line={line} />}
    </div>
  );
}

function TitleInput({ line, onDone }: { line: Line; onDone: () => void }) {
  const { rename } = useMarkerChanges();
  const [title, setTitle] = useState(line.marker.title);
  const keep = () => {
    onDone();
    const words = title.trim();
    if (words !== '' && words !== line.marker.title) void rename(line.marker.id, words);
  };
  return (
    <input
      className={styles.titleInput}
      aria-label="Title of this marker"
      value={title}
      maxLength={200}
      // biome-ignore lint/a11y/noAutofocus: it opens because the repairer asked to write here.
      autoFocus
      onFocus={(event) => event.currentTarget.select()}
      onChange={(event) => setTitle(event.currentTarget.value)}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key === 'Enter') keep();
        if (event.key === 'Escape') onDone();
      }}
    />
  );
}

function MarkerTools({ line, onWrite }: { line: Line; onWrite: (id: string) => void }) {
  const { marker } = line;
  const player = usePlayer();
  const { record } = useDesk();
  const changes = useMarkerChanges();
  const moment = () => player?.moment ?? null;
  const endHere = () => {
    const at = moment();
    if (at?.takeId === marker.takeId && at.ms > marker.ms) void changes.setEnd(marker.id, at.ms);
  };
  return (
    <div className={styles.tools}>
      <Button onClick={() => onWrite(marker.id)}>Rename</Button>
      <Button onClick={() => void changes.nudge(marker, -100)} aria-label="Nudge 0.1 seconds earlier">
        −0.1 s
      </Button>
      <Button onClick={() => void changes.nudge(marker, 100)} aria-label="Nudge 0.1 seconds later">
        +0.1 s
      </Button>
      <Button onClick={() => changes.moveTo(marker.id, moment())}>Move here</Button>
      {marker.endMs === null ? (
        <Button onClick={endHere}>Ends here</Button>
      ) : (
        <Button onClick={() => void changes.setEnd(marker.id, null)}>Make a point</Button>
      )}
      <label className={styles.inline}>
        <span className="only-read">Kind</span>
        <select
          value={marker.kind}
          onChange={(event) => void changes.setKind(marker.id, event.currentTarget.value)}
        >
          {markerKinds.map((kind) => (
            <option key={kind} value={kind}>
              {markerWords[kind]}
            </option>
          ))}
        </select>
      </label>
      <label className={styles.inline}>
        <input
          type="checkbox"
          checked={marker.public}
          onChange={(event) => void changes.setPublic(marker.id, event.currentTarget.checked)}
        />
        Chapter
      </label>
      <Button weight="alarm" onClick={() => void changes.remove(marker)}>
        Delete
      </Button>
      <p className={styles.fine}>
        take {record.takes.findIndex((take) => take.id === marker.takeId) + 1},{' '}
        <span className="figures">{exactTime(marker.ms)}</span>
        {marker.endMs !== null && (
          <>
            {' '}
            to <span className="figures">{exactTime(marker.endMs)}</span>
          </>
        )}
      </p>
    </div>
  );
}
