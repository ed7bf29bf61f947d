'use client';

import { Button } from '@/app/_parts/button';
import { ChoiceField, TextField } from '@/app/_parts/field';
import type { Harness } from '@/shared/jack';
import { freeId, type HarnessDraft, without } from './draft';
import type { FieldsProps } from './fields-props';
import styles from './jack.module.css';

type HarnessSwitch = Harness['switches'][number];
type SplitSwitch = Extract<HarnessSwitch, { kind: 'split' }>;

const mostSwitches = 6;
const kindWords = {
  split: 'Splits a pickup to one coil',
  phase: 'Exchanges the two leads of a pickup',
  parallel: 'Puts the coils of a pickup in parallel',
} as const;

/** Switches that change a pickup, push-pull or on their own. */
export function SwitchFields({ draft, onChange }: FieldsProps) {
  const { switches, pickups } = draft;
  const doubled = pickups.filter(({ coils }) => coils.length === 2);
  const replace = (at: number, next: HarnessSwitch) =>
    onChange({ switches: switches.map((one, index) => (index === at ? next : one)) });
  const add = (next: HarnessSwitch) => onChange({ switches: [...switches, next] });
  const [firstDoubled] = doubled;
  const [first] = pickups;
  return (
    <div className={styles.group}>
      <h3>Split and phase switches</h3>
      {switches.map((one, at) => (
        <fieldset key={one.id} className={styles.part}>
          <legend>{one.name}</legend>
          <p className={styles.fine}>{kindWords[one.kind]}.</p>
          <div className={styles.fields}>
            <TextField
              label="Switch"
              value={one.name}
              maxLength={60}
              onChange={(event) => replace(at, { ...one, name: event.currentTarget.value })}
            />
            {one.kind === 'split' ? (
              <SplitChoices one={one} doubled={doubled} onChange={(next) => replace(at, next)} />
            ) : (
              <ChoiceField
                label="Works on"
                value={one.pickup}
                onChange={(event) => replace(at, { ...one, pickup: event.currentTarget.value })}
              >
                {(one.kind === 'phase' ? pickups : doubled).map(({ id, subject }) => (
                  <option key={id} value={id}>
                    {subject}
                  </option>
                ))}
              </ChoiceField>
            )}
            <Button
              weight="bare"
              className={styles.take ?? ''}
              aria-label={`Take ${one.name} away`}
              onClick={() => onChange({ switches: without(switches, at) })}
            >
              Take away
            </Button>
          </div>
        </fieldset>
      ))}
      {switches.length < mostSwitches && (
        <div className={styles.row}>
          {firstDoubled && <Button onClick={() => add(newSplit(draft, doubled))}>Add a split switch</Button>}
          {first && (
            <Button onClick={() => add(newSwitch(draft, 'phase', first.id))}>Add a phase switch</Button>
          )}
          {firstDoubled && (
            <Button onClick={() => add(newSwitch(draft, 'parallel', firstDoubled.id))}>
              Add a series–parallel switch
            </Button>
          )}
        </div>
      )}
      {!firstDoubled && (
        <p className={styles.fine}>A split needs a pickup with two coils: add the second coil above.</p>
      )}
    </div>
  );
}

interface SplitChoicesProps {
  one: SplitSwitch;
  doubled: HarnessDraft['pickups'];
  onChange: (next: SplitSwitch) => void;
}

function SplitChoices({ one, doubled, onChange }: SplitChoicesProps) {
  return doubled.map(({ id, subject, coils }) => (
    <ChoiceField
      key={id}
      label={`Of ${subject} it keeps`}
      value={one.splits.find(({ pickup }) => pickup === id)?.keeps ?? ''}
      onChange={(event) => {
        const keeps = event.currentTarget.value;
        const others = one.splits.filter(({ pickup }) => pickup !== id);
        onChange({ ...one, splits: keeps === '' ? others : [...others, { pickup: id, keeps }] });
      }}
    >
      <option value="">all of it</option>
      {coils.map(({ key, name }) => (
        <option key={key} value={name}>
          {name}
        </option>
      ))}
    </ChoiceField>
  ));
}

/** Splits every pickup of two coils that no other switch splits. */
function newSplit(draft: HarnessDraft, doubled: HarnessDraft['pickups']): HarnessSwitch {
  const split = draft.switches.flatMap((one) =>
    one.kind === 'split' ? one.splits.map(({ pickup }) => pickup) : [],
  );
  const free = doubled.filter(({ id }) => !split.includes(id));
  const splits = (free.length > 0 ? free : doubled).map(({ id, coils }) => ({
    pickup: id,
    keeps: coils[0]?.name ?? '',
  }));
  const id = freeId(draft, 'split switch');
  return { kind: 'split', id, name: id, splits };
}

function newSwitch(draft: HarnessDraft, kind: 'phase' | 'parallel', pickup: string): HarnessSwitch {
  const id = freeId(draft, kind === 'phase' ? 'phase switch' : 'series-parallel switch');
  return { kind, id, name: id, pickup };
}
