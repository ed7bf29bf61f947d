'use client';

import { KeyHint } from '@/app/_parts/key-hint';
import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { type MarkerKind, markerKinds } from '@/shared/markers';
import styles from './desk.module.css';
import { markerKeys } from './keys';

/** One touch drops a marker at the moment shown. */
export function DropBar({ disabled, onDrop }: { disabled: boolean; onDrop: (kind: MarkerKind) => void }) {
  return (
    <div className={styles.dropBar} role="group" aria-label="Drop a marker">
      {markerKinds.map((kind) => (
        <button
          key={kind}
          type="button"
          className={styles.drop}
          data-kind={kind}
          disabled={disabled}
          onClick={() => onDrop(kind)}
        >
          <MarkerShape kind={kind} size={22} />
          <span>{markerWords[kind]}</span>
          <KeyHint>{markerKeys[kind]}</KeyHint>
        </button>
      ))}
    </div>
  );
}
