'use client';

import { z } from 'zod';
import { KeptField } from '@/app/_parts/kept-field';
import { ClashNote } from '@/app/_parts/kept-field-clash';
import { useKeptPick } from '@/app/_parts/kept-field-pick';
import { useDesk } from '../_desk/use-record';
import styles from './ticket.module.css';
import { usePatchJob } from './use-keep';

const usual = ['case', 'strap', 'cable'] as const;
const thingsSchema = z.array(z.string());

/** What the instrument came in with: the usual things by a tick, anything by a word. */
export function CameWith() {
  const { cameWith } = useDesk().record.job;
  const patch = usePatchJob();
  const keep = (next: readonly string[], was: readonly string[]) =>
    patch({ cameWith: [...next] }, { cameWith: [...was] });
  const ticks = useKeptPick({ name: 'cameWith', schema: thingsSchema, value: cameWith, onKeep: keep });
  const tick = (thing: string, here: boolean) =>
    void ticks.amend((was) => {
      const others = was.filter((other) => other !== thing);
      return here ? [...others, thing] : others;
    });
  /** A thing with a comma in its name is one thing as long as nobody rewrites the line. */
  const listOf = (text: string) => (text === inLine(cameWith) ? cameWith : thingsIn(text));
  return (
    <div className={styles.group} role="group" aria-label="Came in with">
      <div className={styles.row}>
        {usual.map((thing) => (
          <label key={thing} className={styles.tick}>
            <input
              type="checkbox"
              checked={cameWith.includes(thing)}
              onChange={(event) => tick(thing, event.currentTarget.checked)}
            />
            {thing}
          </label>
        ))}
      </div>
      {ticks.problem && (
        <p className={styles.warn} role="alert">
          {ticks.problem}
        </p>
      )}
      {ticks.clash && (
        <ClashNote
          there={inLine(ticks.clash.there)}
          onKeepMine={() => void ticks.keepMine()}
          onTakeThat={ticks.takeThat}
        />
      )}
      <KeptField
        label="Came in with"
        hint="Anything, parted by commas: hard case, spare strings."
        name="cameWith"
        value={inLine(cameWith)}
        onKeep={(next, was) => keep(thingsIn(next), listOf(was))}
        say={(now) => inLine(thingsSchema.parse(now))}
        wraps
        maxLength={2000}
      />
    </div>
  );
}

function inLine(things: readonly string[]): string {
  return things.join(', ');
}

function thingsIn(text: string): string[] {
  return [...new Set(text.split(/[,;\n]/).flatMap((thing) => thing.trim() || []))];
}
