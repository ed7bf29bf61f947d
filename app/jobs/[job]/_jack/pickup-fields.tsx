'use client';

import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { unmeasuredPickup } from '@/lib/wiring';
import { harnessPickupSchema, usualTolerancePercent } from '@/shared/jack';
import { changed, type DraftPickup, freeId, newKey, without, withoutPickup } from './draft';
import type { FieldsProps } from './fields-props';
import styles from './jack.module.css';
import { OhmsField } from './ohms-field';

const mostPickups = 6;
const mostCoils = 4;
const joinedSchema = harnessPickupSchema.shape.joined;

/** The pickups with their coils. */
export function PickupFields({ draft, onChange }: FieldsProps) {
  const { pickups } = draft;
  const add = () => {
    const place = ['neck', 'middle', 'bridge'].find((one) => !pickups.some(({ id }) => id === one));
    const id = freeId(draft, place ?? 'pickup');
    const coils = unmeasuredPickup(id).coils.map((coil) => ({ ...coil, key: newKey(), ohms: '' }));
    onChange({ pickups: [...pickups, { ...unmeasuredPickup(id), key: newKey(), coils }] });
  };
  return (
    <div className={styles.group}>
      <h3>Pickups</h3>
      {pickups.map((pickup, at) => (
        <PickupField
          key={pickup.key}
          pickup={pickup}
          onChange={(patch) => onChange({ pickups: changed(pickups, at, patch) })}
          onRemove={pickups.length > 1 ? () => onChange(withoutPickup(draft, pickup.id)) : null}
        />
      ))}
      {pickups.length < mostPickups && <Button onClick={add}>Add a pickup</Button>}
    </div>
  );
}

interface PickupFieldProps {
  pickup: DraftPickup;
  onChange: (patch: Partial<DraftPickup>) => void;
  onRemove: (() => void) | null;
}

function PickupField({ pickup, onChange, onRemove }: PickupFieldProps) {
  const { subject, coils, joined } = pickup;
  const addCoil = () => {
    const name = coils.length === 1 ? 'second coil' : `coil ${coils.length + 1}`;
    const coil = { key: newKey(), name, ohms: '', tolerancePercent: usualTolerancePercent.coil };
    onChange({ coils: [...coils, coil] });
  };
  return (
    <fieldset className={styles.part}>
      <legend>{subject}</legend>
      <div className={styles.fields}>
        <TextField
          label="Pickup"
          value={subject}
          maxLength={60}
          onChange={(event) => onChange({ subject: event.currentTarget.value })}
        />
        {coils.length > 1 && (
          <ChoiceField
            label="Its coils are"
            value={joined}
            onChange={(event) => onChange({ joined: joinedSchema.parse(event.currentTarget.value) })}
          >
            <option value="series">in series</option>
            <option value="parallel">in parallel</option>
            <option value="first coil only">only the first is joined</option>
          </ChoiceField>
        )}
      </div>
      {coils.map((coil, at) => (
        <div key={coil.key} className={styles.fields}>
          <TextField
            label={coils.length > 1 ? `Coil ${at + 1}, hot side first` : 'Coil'}
            value={coil.name}
            maxLength={60}
            onChange={(event) => onChange({ coils: changed(coils, at, { name: event.currentTarget.value }) })}
          />
          <OhmsField
            label={`Resistance of ${coil.name}`}
            value={coil.ohms}
            onChange={(ohms) => onChange({ coils: changed(coils, at, { ohms }) })}
          />
          {coils.length > 1 && (
            <Button
              weight="bare"
              className={styles.take ?? ''}
              aria-label={`Take ${coil.name} of ${subject} away`}
              onClick={() => onChange({ coils: without(coils, at) })}
            >
              Take away
            </Button>
          )}
        </div>
      ))}
      <div className={styles.row}>
        {coils.length < mostCoils && (
          <Button aria-label={`Add a coil to ${subject}`} onClick={addCoil}>
            Add a coil
          </Button>
        )}
        {onRemove && (
          <Button weight="bare" aria-label={`Take ${subject} away`} onClick={onRemove}>
            Take this pickup away
          </Button>
        )}
      </div>
    </fieldset>
  );
}
