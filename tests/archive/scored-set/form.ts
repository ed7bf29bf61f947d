import { z } from 'zod';
import { claimKindSchema, type NewClaim, sureness } from '@/shared/claims';
import { markerKindSchema } from '@/shared/markers';
import { bases, basisSchema, digitsSchema, readingKindIdSchema, unitIdSchema } from '@/shared/readings';
import { planLineSchema } from '@/shared/wiring';
import {
  deeds,
  type NewPart,
  type NewWorkItem,
  oldPartFates,
  origins,
  partSources,
  workOutcomes,
} from '@/shared/work';

/**
 * A job as it is written down for the scored set: short lines of text, read into values here.
 *
 * - `film`, one line each: `m:ss work: Title // note` is a marker; `m:ss = kind digits unit subject [a-b] (basis)`
 *   a reading, `open` for digits where the meter showed open; `m:ss - words` a line of narration.
 * - `work`: `asked done: what // why`; `parts`: `fitted stock: what // doubt`;
 *   `claims`: `year likely stated: value // evidence`, with `original part (bridge) …` where there is a subject.
 * - `joint.lines`: `hot: red + white → input lug (measured)`.
 */
export interface WrittenJob {
  key: string;
  /** The day it came in, and the day it was filmed where that is another. */
  on: string;
  filmed?: string;
  type: string;
  client?: string;
  title: string;
  maker?: string;
  model?: string;
  features?: string;
  work?: string[];
  parts?: string[];
  claims?: string[];
  traces?: WrittenTrace[];
  film: string;
}

interface WrittenTrace {
  subject: string;
  conductors: string;
  rows?: string[];
  joint?: { at: string; title: string; lines: string[] };
}

export type ScoredJob = ReturnType<typeof job>;

export function job({ film, work, parts, claims, traces, ...told }: WrittenJob) {
  return {
    ...told,
    ...readFilm(film),
    work: (work ?? []).map(workItem),
    parts: (parts ?? []).map(part),
    claims: (claims ?? []).map(claim),
    traces: (traces ?? []).map(({ conductors, joint, ...trace }) => ({
      ...trace,
      conductors: conductors.split(' '),
      joint: joint ? { ...joint, ms: msOf(joint.at), lines: joint.lines.map(planLine) } : null,
    })),
  };
}

/** Jobs with more lines of narration, written apart by the job's key. @throws where a key is no job's */
export function withTalk(jobs: ScoredJob[], talk: Record<string, string>): ScoredJob[] {
  const unknown = Object.keys(talk).filter((key) => !jobs.some((each) => each.key === key));
  if (unknown.length > 0) throw new Error(`There is talk for jobs that are not there: ${unknown}.`);
  return jobs.map((each) => {
    const more = talk[each.key];
    if (!more) return each;
    return { ...each, lines: [...each.lines, ...readFilm(more).lines].sort((a, b) => a.ms - b.ms) };
  });
}

/** Milliseconds of a time on the film, "12:05". */
export function msOf(time: string): number {
  const [, minutes, seconds] = matched(/^(\d+):(\d\d)$/, time);
  return (Number(minutes) * 60 + Number(seconds)) * 1000;
}

function readFilm(film: string) {
  const markers = [];
  const readings = [];
  const lines = [];
  for (const written of film.trim().split('\n')) {
    const [, time = '', rest = ''] = matched(/^\s*(\d+:\d\d) (.+)$/, written);
    const at = { ms: msOf(time) };
    if (rest.startsWith('- ')) lines.push({ ...at, text: rest.slice(2) });
    else if (rest.startsWith('= ')) readings.push({ ...at, ...reading(rest.slice(2)) });
    else markers.push({ ...at, ...marker(rest) });
  }
  return { markers, readings, lines };
}

function marker(text: string) {
  const [, kind, title = '', note] = matched(/^([a-z]+): (.+?)(?: \/\/ (.+))?$/, text);
  return { kind: markerKindSchema.parse(kind), title, ...(note ? { note } : {}) };
}

function reading(text: string) {
  const [, kind, digits, unit, subject, a, b, basis] = matched(
    /^(\S+) (\S+) (\S+)(?: (.+?))?(?: \[(.+?)-(.+?)\])?(?: \((measured|implied|assumed|stated)\))?$/,
    text,
  );
  return {
    kind: readingKindIdSchema.parse(kind),
    ...(digits === 'open' ? { open: true } : { value: digitsSchema.parse(digits) }),
    unit: unitIdSchema.parse(unit),
    subject: subject ?? '',
    ...(a && b ? { between: z.tuple([z.string(), z.string()]).parse([a, b]) } : {}),
    basis: basis ? basisSchema.parse(basis) : ('measured' as const),
  };
}

function workItem(text: string): NewWorkItem {
  const choice = `^(${origins.join('|')}) (${workOutcomes.join('|')}): (.+?)(?: // (.+))?$`;
  const [, origin, outcome, what = '', why] = matched(new RegExp(choice), text);
  return {
    origin: z.enum(origins).parse(origin),
    outcome: z.enum(workOutcomes).parse(outcome),
    what,
    why: why ?? null,
  };
}

function part(text: string): NewPart {
  const choice = `^(${deeds.join('|')})(?: (${[...partSources, ...oldPartFates].join('|')}))?: (.+?)(?: // (.+))?$`;
  const [, deed, source, what = '', doubt] = matched(new RegExp(choice), text);
  const from = z.enum(partSources).safeParse(source);
  const fate = z.enum(oldPartFates).safeParse(source);
  return {
    deed: z.enum(deeds).parse(deed),
    what,
    source: from.success ? from.data : null,
    fate: fate.success ? fate.data : null,
    doubt: doubt ?? null,
    doubtBasis: doubt ? 'stated' : null,
  };
}

function claim(text: string): NewClaim {
  const choice = `^([a-z ]+?)(?: \\((.+?)\\))? (${sureness.join('|')}) (${bases.join('|')}): (.+?)(?: // (.+))?$`;
  const [, kind, subject, sure, basis, value = '', evidence] = matched(new RegExp(choice), text);
  return {
    kind: claimKindSchema.parse(kind),
    subject: subject ?? null,
    sure: z.enum(sureness).parse(sure),
    basis: basisSchema.parse(basis),
    value,
    evidence: evidence ?? null,
  };
}

function planLine(text: string) {
  const [, role, ends = '', goesTo = '', basis] = matched(
    /^([a-z]+): (.+?)(?: → (.+?))?(?: \((measured|implied|assumed|stated)\))?$/,
    text,
  );
  return planLineSchema.parse({
    role,
    ends: ends.split(' + '),
    goesTo,
    inside: false,
    basis: basis ?? 'measured',
  });
}

function matched(pattern: RegExp, text: string): (string | undefined)[] {
  const found = pattern.exec(text);
  if (!found) throw new Error(`“${text}” is not written as ${pattern}.`);
  return [...found];
}
