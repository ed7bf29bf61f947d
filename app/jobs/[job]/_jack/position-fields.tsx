'use client';

import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { harnessPositionSchema } from '@/shared/jack';
import { changed, type DraftPosition, type HarnessDraft, newKey, without } from './draft';
import type { FieldsProps } from './fields-props';
import styles from './jack.module.css';

const mostPositions = 12;
const togetherSchema = harnessPositionSchema.shape.together;

/** The positions of the selector, with a tick for each pickup that sounds there. */
export function PositionFields({ draft, onChange }: FieldsProps) {
  const { positions } = draft;
  const add = () =>
    onChange({
      positions: [
        ...positions,
        { key: newKey(), name: `position ${positions.length + 1}`, on: [], together: 'parallel' },
      ],
    });
  return (
    <div className={styles.group}>
      <h3>Positions of the selector</h3>
      <p className={styles.fine}>Without a selector it is one position with every pickup ticked.</p>
      {positions.map((position, at) => (
        <PositionField
          key={position.key}
          position={position}
          pickups={draft.pickups}
          onChange={(patch) => onChange({ positions: changed(positions, at, patch) })}
          onRemove={positions.length > 1 ? () => onChange({ positions: without(positions, at) }) : null}
        />
      ))}
      {positions.length < mostPositions && <Button onClick={add}>Add a position</Button>}
    </div>
  );
}

interface PositionFieldProps {
  position: DraftPosition;
  pickups: HarnessDraft['pickups'];
  onChange: (patch: Partial<DraftPosition>) => void;
  onRemove: (() => void) | null;
}

function PositionField({ position, pickups, onChange, onRemove }: PositionFieldProps) {
  const { name, on, together } = position;
  return (
    <fieldset className={styles.part}>
      <legend>{name}</legend>
      <div className={styles.fields}>
        <TextField
          label="Position"
          value={name}
          maxLength={60}
          onChange={(event) => onChange({ name: event.currentTarget.value })}
        />
        <div className={styles.ticks}>
          {pickups.map(({ id, subject }) => (
            <label key={id} className={styles.tick}>
              <input
                type="checkbox"
                checked={on.includes(id)}
                onChange={(event) =>
                  onChange({ on: event.currentTarget.checked ? [...on, id] : on.filter((one) => one !== id) })
                }
              />
              {subject}
            </label>
          ))}
        </div>
        {on.length > 1 && (
          <ChoiceField
            label="Together"
            value={together}
            onChange={(event) => onChange({ together: togetherSchema.parse(event.currentTarget.value) })}
          >
            <option value="parallel">in parallel</option>
            <option value="series">in series</option>
          </ChoiceField>
        )}
        {onRemove && (
          <Button
            weight="bare"
            className={styles.take ?? ''}
            aria-label={`Take position ${name} away`}
            onClick={onRemove}
          >
            Take away
          </Button>
        )}
      </div>
    </fieldset>
  );
}
