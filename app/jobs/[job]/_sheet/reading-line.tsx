'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { asSayable, kindOf, sayPlace, sayValue } from '@/lib/readings';
import { bases, basisSchema } from '@/shared/readings';
import { useReadingChanges } from '../_desk/use-reading-changes';
import { usePlayer } from '../_film/use-film';
import { ReadingMargin } from './reading-margin';
import { SaveLine } from './save-line';
import styles from './sheet.module.css';
import type { SheetLine } from './sheet-lines';

type Line = SheetLine & { type: 'reading' };

interface ReadingLineProps {
  line: Line;
  selected: boolean;
  onSelect: (line: SheetLine) => void;
}

/** A reading at its moment; selected, with the picture of that moment, so that the meter can be read again. */
export function ReadingLine({ line, selected, onSelect }: ReadingLineProps) {
  const { reading } = line;
  const sayable = asSayable(reading);
  const kind =
    reading.kind === 'resistance' || reading.kind === 'polarity-kick' ? null : kindOf(reading.kind).label;
  return (
    <div className={styles.reading}>
      <button type="button" className={styles.readingRow} onClick={() => onSelect(line)}>
        <span className={styles.value}>{sayValue(sayable)}</span>
        <span className={styles.subject}>
          {[reading.subject, kind, sayPlace(sayable)].filter(Boolean).join(', ')}
        </span>
        <ReadingMargin reading={reading} />
        {reading.basis !== 'measured' && <span className={styles.tag}>{reading.basis}</span>}
      </button>
      {selected && <ReadingTools line={line} />}
      {selected && <SaveLine line={line} />}
    </div>
  );
}

function ReadingTools({ line }: { line: Line }) {
  const { reading } = line;
  const player = usePlayer();
  const { moveTo, remove, setBasis } = useReadingChanges();
  const moment = () => player?.moment ?? null;
  return (
    <>
      {reading.takeId !== null && reading.ms !== null && <Still takeId={reading.takeId} ms={reading.ms} />}
      <div className={styles.tools}>
        <Button
          onClick={() => {
            const at = moment();
            if (at) void moveTo(reading.id, at);
          }}
        >
          Move here
        </Button>
        <label className={styles.inline}>
          <span>Known</span>
          <select
            value={reading.basis}
            onChange={(event) => void setBasis(reading.id, basisSchema.parse(event.currentTarget.value))}
          >
            {bases.map((basis) => (
              <option key={basis}>{basis}</option>
            ))}
          </select>
        </label>
        <Button weight="alarm" onClick={() => void remove(reading)}>
          Delete
        </Button>
      </div>
    </>
  );
}

/** The very picture of the moment; where it cannot be had, nothing stands in for it. */
function Still({ takeId, ms }: { takeId: string; ms: number }) {
  const [lost, setLost] = useState(false);
  if (lost) return null;
  return (
    // biome-ignore lint/performance/noImgElement: a still is served by this machine in its final size.
    <img
      className={styles.still}
      src={`/api/takes/${takeId}/still?ms=${ms}`}
      alt="The bench as this value was read"
      onError={() => setLost(true)}
    />
  );
}
