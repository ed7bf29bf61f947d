'use client';

import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import { harnessToneSchema, harnessVolumeSchema, usualTolerancePercent } from '@/shared/jack';
import {
  changed,
  type DraftTone,
  type DraftVolume,
  freeId,
  type HarnessDraft,
  newKey,
  without,
} from './draft';
import type { FieldsProps } from './fields-props';
import styles from './jack.module.css';
import { OhmsField } from './ohms-field';

/** A pot that was measured out of its place is known as well as the meter reads. Common practice, no source. */
const measuredTolerancePercent = 2;
const mostOfAKind = 7;
const wiringSchema = harnessVolumeSchema.shape.wiring;
const sideSchema = harnessToneSchema.shape.side;

/** Volumes and tones, and what each stands for. */
export function PotFields({ draft, onChange }: FieldsProps) {
  const { volumes, tones } = draft;
  return (
    <div className={styles.group}>
      <h3>Volume and tone pots</h3>
      <p className={styles.fine}>
        A pot for one pickup sits before the selector, one for all after it. A tone’s capacitor blocks the
        meter.
      </p>
      {volumes.map((pot, at) => (
        <PotField
          key={pot.key}
          pot={pot}
          draft={draft}
          onChange={(patch) => onChange({ volumes: changed(volumes, at, patch) })}
          onRemove={() => onChange({ volumes: without(volumes, at) })}
        >
          <ChoiceField
            label="Wired"
            value={pot.wiring}
            onChange={(event) => {
              const wiring = wiringSchema.parse(event.currentTarget.value);
              onChange({ volumes: changed(volumes, at, { wiring }) });
            }}
          >
            <option value="divider">outer lug to pickup</option>
            <option value="independent">wiper to pickup</option>
          </ChoiceField>
        </PotField>
      ))}
      {tones.map((pot, at) => (
        <PotField
          key={pot.key}
          pot={pot}
          draft={draft}
          onChange={(patch) => onChange({ tones: changed(tones, at, patch) })}
          onRemove={() => onChange({ tones: without(tones, at) })}
        >
          <ChoiceField
            label="Side of the volume"
            value={pot.side}
            onChange={(event) => {
              const side = sideSchema.parse(event.currentTarget.value);
              onChange({ tones: changed(tones, at, { side }) });
            }}
          >
            <option value="pickup">pickup’s side</option>
            <option value="jack">jack’s side</option>
          </ChoiceField>
        </PotField>
      ))}
      <div className={styles.row}>
        {volumes.length < mostOfAKind && (
          <Button
            onClick={() =>
              onChange({ volumes: [...volumes, { ...newPot(draft, 'volume'), wiring: 'divider' }] })
            }
          >
            Add a volume
          </Button>
        )}
        {tones.length < mostOfAKind && (
          <Button
            onClick={() => onChange({ tones: [...tones, { ...newPot(draft, 'tone'), side: 'pickup' }] })}
          >
            Add a tone
          </Button>
        )}
      </div>
    </div>
  );
}

function newPot(draft: HarnessDraft, what: 'volume' | 'tone') {
  const pots = what === 'volume' ? draft.volumes : draft.tones;
  const unserved = draft.pickups.find(({ id }) => !pots.some(({ serves }) => serves === id));
  const serves = pots.some((pot) => pot.serves === 'all') ? (unserved?.id ?? 'all') : 'all';
  const id = freeId(draft, serves === 'all' ? what : `${serves} ${what}`);
  const [like] = [...draft.volumes, ...draft.tones];
  return {
    key: newKey(),
    id,
    name: id,
    ohms: like?.ohms ?? '',
    tolerancePercent: usualTolerancePercent.pot,
    serves,
  };
}

interface PotFieldProps {
  pot: DraftVolume | DraftTone;
  draft: HarnessDraft;
  onChange: (patch: { name?: string; ohms?: string; serves?: string; tolerancePercent?: number }) => void;
  onRemove: () => void;
  children: React.ReactNode;
}

function PotField({ pot, draft, onChange, onRemove, children }: PotFieldProps) {
  const { name, ohms, serves, tolerancePercent } = pot;
  const tolerances = new Set([usualTolerancePercent.pot, measuredTolerancePercent, tolerancePercent]);
  return (
    <fieldset className={styles.part}>
      <legend>{name}</legend>
      <div className={styles.fields}>
        <TextField
          label="Pot"
          value={name}
          maxLength={60}
          onChange={(event) => onChange({ name: event.currentTarget.value })}
        />
        <OhmsField label="Resistance" value={ohms} onChange={(text) => onChange({ ohms: text })} />
        <ChoiceField
          label="Known"
          value={tolerancePercent}
          onChange={(event) => onChange({ tolerancePercent: Number(event.currentTarget.value) })}
        >
          {[...tolerances].map((percent) => (
            <option key={percent} value={percent}>
              {sayTolerance(percent)}
            </option>
          ))}
        </ChoiceField>
        <ChoiceField
          label="Stands for"
          value={serves}
          onChange={(event) => onChange({ serves: event.currentTarget.value })}
        >
          <option value="all">all pickups</option>
          {draft.pickups.map(({ id, subject }) => (
            <option key={id} value={id}>
              {subject} alone
            </option>
          ))}
        </ChoiceField>
        {children}
        <Button
          weight="bare"
          className={styles.take ?? ''}
          aria-label={`Take ${name} away`}
          onClick={onRemove}
        >
          Take away
        </Button>
      </div>
    </fieldset>
  );
}

function sayTolerance(percent: number): string {
  if (percent === usualTolerancePercent.pot) return `as marked, ±${percent} %`;
  return percent === measuredTolerancePercent ? `measured, ±${percent} %` : `±${percent} %`;
}
