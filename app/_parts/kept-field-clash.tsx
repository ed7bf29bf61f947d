import { z } from 'zod';
import { DomainError } from '@/shared/problem';
import { Button } from './button';
import { CallError, inWords } from './call';
import styles from './kept-field.module.css';

const clashSchema = z.object({ now: z.record(z.string(), z.unknown()) });
const errorsSchema = z.object({ errors: z.array(z.object({ pointer: z.string(), detail: z.string() })) });

/** What stands in a field by now, where a change was refused for that; null where something else is the trouble. */
export function clashOf(error: unknown, name: string): { now: unknown } | null {
  if (!(error instanceof CallError)) return null;
  const clash = clashSchema.safeParse(error.problem);
  return clash.success && name in clash.data.now ? { now: clash.data.now[name] } : null;
}

/** What is wrong with what was written in a field, and what to do: for the line below it. */
export function sayWrong(error: unknown, name: string): string {
  if (error instanceof DomainError) return `${error.message} ${error.detail}`;
  const { title, detail } = inWords(error);
  return `${title} ${ruleBroken(error, name) ?? detail}`;
}

/** The rule of the contract that the field broke: its name need not be said beside it. */
function ruleBroken(error: unknown, name: string): string | null {
  const problem = error instanceof CallError ? errorsSchema.safeParse(error.problem) : null;
  const rule = problem?.data?.errors.find(({ pointer }) => pointer === `/${name}`)?.detail;
  return rule ? `It must be: ${rule}` : null;
}

interface ClashNoteProps {
  /** What the other window wrote. */
  there: string;
  onKeepMine: () => void;
  onTakeThat: () => void;
}

/** What another window wrote meanwhile, beside what was written here, until one of the two is chosen. */
export function ClashNote({ there, onKeepMine, onTakeThat }: ClashNoteProps) {
  return (
    <div className={styles.clash}>
      <p>
        There it says: <q>{there === '' ? 'nothing' : there}</q>
      </p>
      <div className={styles.choices}>
        <Button onClick={onKeepMine}>Keep mine</Button>
        <Button onClick={onTakeThat}>Take that one</Button>
      </div>
    </div>
  );
}
