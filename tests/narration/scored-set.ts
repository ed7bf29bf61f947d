import { readdirSync, readFileSync } from 'node:fs';
import type { NarrationContext, NarrationLine, ProposalType } from '@/shared/narration';

/** One hand-written expectation: its type, the moment, and the rest of its line in words. */
export interface Expectation {
  readonly type: ProposalType;
  readonly ms: number;
  readonly rest: string;
}

export interface ScoredNarration {
  readonly name: string;
  readonly holdout: boolean;
  readonly lines: readonly NarrationLine[];
  readonly context: NarrationContext;
  readonly expected: readonly Expectation[];
}

const MS_PER_WORD = 480;
const PAUSE_BETWEEN_LINES_MS = 600;
const FOLDER = new URL('./set/', import.meta.url);

const isType = (word: string): word is ProposalType =>
  ['marker', 'reading', 'coil-pair', 'role', 'joint', 'work', 'private', 'camera-stop'].includes(word);

function readExpectation(text: string, ms: number): Expectation {
  const [type = '', ...rest] = text.split(' ');
  if (!isType(type)) throw new Error(`no proposal type: ${text}`);
  return { type, ms, rest: rest.join(' ') };
}

/** Reads one file of the set; the form is described in `set/README.md`. */
export function readScored(name: string, source: string): ScoredNarration {
  const settings = new Map<string, string>();
  const lines: NarrationLine[] = [];
  const expected: Expectation[] = [];
  let clockMs = 1000;
  for (const row of source.split('\n')) {
    const last = lines.at(-1);
    if (row.startsWith('# ')) settings.set(row.slice(2).split(':')[0] ?? '', row.split(': ')[1] ?? 'yes');
    else if (row.startsWith('~')) clockMs += Number(row.slice(1)) * 1000;
    else if (row.startsWith('> ') && last)
      expected.push(readExpectation(row.slice(2), (last.startMs + last.endMs) / 2));
    else if (row !== '') {
      const spokenMs = row.split(' ').length * MS_PER_WORD;
      lines.push({ startMs: clockMs, endMs: clockMs + spokenMs, text: row });
      clockMs += spokenMs + PAUSE_BETWEEN_LINES_MS;
    }
  }
  const context = {
    instrumentType: settings.get('instrument') ?? 'other',
    clientName: settings.get('client') ?? null,
    slang: [],
  };
  return { name, holdout: settings.has('holdout'), lines, context, expected };
}

export function scoredSet(): ScoredNarration[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.txt'))
    .sort()
    .map((file) => readScored(file.replace('.txt', ''), readFileSync(new URL(file, FOLDER), 'utf8')));
}
