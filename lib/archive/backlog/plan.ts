import type { BacklogPlan, JobNamed, JobRule, LeftOut, PlannedTake, ProposedJob } from '@/shared/backlog';
import { stemOf } from './captions-beside';
import { type Dated, type DatedFacts, dated, wallClockOf } from './dated';
import { type Home, homeOf, titleOfHome } from './homes';
import { daysApart, wallDay } from './name-dates';
import { sharedTitle, typeSaid } from './names';
import { monthsWritten } from './plain-words';
import { inSessions } from './sessions';

/** A job that the same bytes belong to. */
export interface Use {
  job: JobNamed;
  /** By its place; otherwise by its fingerprint only. */
  here: boolean;
  /** An import made the job, and no words are put to its take yet. */
  wantsCaptions: boolean;
}

/** One recording in the folder, as the look at it left it. */
export interface BacklogFile extends DatedFacts {
  /** Names of captions beside it, the one to be tried first in front. */
  captions: string[];
  /** The same bytes have the same; null where it could not be read. */
  fingerprint: string | null;
  /** Why it cannot be read and what to do. */
  unreadable: string | null;
  use: Use | null;
}

/** A job that an earlier import made. */
export interface EarlierJob {
  home: string;
  /** Null where the whole folder is the job; empty where nothing told a day. */
  day: string | null;
  job: JobNamed;
}

export interface PlanSettings {
  rule: JobRule;
  /** The folder that was chosen, below the recordings folder; empty for all of it. */
  under: string;
  /** IANA name of the workshop's time zone. */
  timeZone: string;
  now: number;
}

/** Recordings of a folder spread wider than this are of several jobs, whatever its name says. */
const widestDays = 60;

type Placed = BacklogFile & { home: Home; dated: Dated; ownDay: string | null };

/**
 * Which jobs the recordings of a folder would become.
 *
 * 1. A recording belongs to the nearest folder above it whose name has words of its own, or else to its own folder.
 * 2. By the rule `usual` a folder with such a name is one job unless its recordings are spread over more than 60 days;
 *    otherwise the recordings of one day are one.
 * 3. What belongs to a job that was made from this folder before joins it.
 * 4. What is a take already, or cannot be read, or is there twice, is left out, and said.
 */
export function planBacklog(
  files: readonly BacklogFile[],
  earlier: readonly EarlierJob[],
  settings: PlanSettings,
): BacklogPlan {
  const groups = groupsOf(place(files, settings), earlier, settings.rule);
  const seen = new Map<string, string>();
  const elsewhere: LeftOut[] = [];
  const jobs = groups.flatMap((group) => {
    const takes = group.files.filter((file) => isNew(file, seen, elsewhere));
    return takes.length > 0 ? [proposed(group, takes)] : [];
  });
  return {
    jobs: jobs.sort(byDay),
    known: files.filter(({ use }) => use?.here).length,
    elsewhere,
    unreadable: files.flatMap(({ path, unreadable, use }) =>
      unreadable !== null && !use ? [{ path, why: unreadable, job: null }] : [],
    ),
  };
}

function place(files: readonly BacklogFile[], { under, timeZone, now }: PlanSettings): Placed[] {
  const wall = wallClockOf(timeZone);
  const latestDay = wallDay(wall(now));
  return files
    .filter(({ unreadable }) => unreadable === null)
    .map((file) => {
      const date = dated(file, wall, latestDay);
      return { ...file, home: homeOf(file.path, under), dated: date, ownDay: date.day };
    });
}

interface Group {
  home: Home;
  /** Null where the whole folder is the job; empty where nothing tells a day. */
  day: string | null;
  joins: JobNamed | null;
  files: Placed[];
}

/** Which job a recording belongs to. */
type Belonging = Omit<Group, 'home' | 'files'>;

function groupsOf(files: readonly Placed[], earlier: readonly EarlierJob[], rule: JobRule): Group[] {
  const madeIn = grouped(earlier, ({ home }) => home);
  return [...grouped(files, ({ home }) => home.path)].flatMap(([path, ofHome]) => {
    const inOrder = inSessions(ofHome);
    const made = madeIn.get(path) ?? [];
    const whole = isOneJob(inOrder, rule);
    const belongs = ({ use, dated }: Placed): Belonging => {
      const day = dated.day ?? '';
      if (use?.here) return { day, joins: use.job };
      const join = made.find((job) => job.day === day) ?? made.find((job) => job.day === null);
      return join ? { day: join.day, joins: join.job } : { day: whole ? null : day, joins: null };
    };
    const byJob = grouped(inOrder, (file) => keyOf(path, belongs(file)));
    return [...byJob.values()].flatMap((group) =>
      group[0] ? [{ ...belongs(group[0]), home: group[0].home, files: group }] : [],
    );
  });
}

function isOneJob(inOrder: readonly Placed[], rule: JobRule): boolean {
  if (rule !== 'usual') return rule === 'folder';
  const days = inOrder.flatMap(({ dated: { day } }) => day ?? []);
  const [first, last] = [days[0], days.at(-1)];
  const spread = first && last ? daysApart(first, last) : 0;
  return inOrder[0]?.home.named === true && spread <= widestDays;
}

function keyOf(home: string, { day, joins }: Belonging): string {
  return JSON.stringify(joins ? [home, joins.id] : [home, day]);
}

/** What is there twice, and what is a take already under another name, is told and left out. */
function isNew(file: Placed, seen: Map<string, string>, elsewhere: LeftOut[]): boolean {
  if (file.use?.here) return file.use.wantsCaptions && file.captions.length > 0;
  if (file.use) {
    elsewhere.push({ path: file.path, why: 'It is a take already, under another name.', job: file.use.job });
    return false;
  }
  const twin = file.fingerprint === null ? undefined : seen.get(file.fingerprint);
  if (twin !== undefined) {
    elsewhere.push({ path: file.path, why: `It is the same recording as “${twin}”.`, job: null });
    return false;
  }
  if (file.fingerprint !== null) seen.set(file.fingerprint, file.path);
  return true;
}

function proposed(group: Group, files: readonly Placed[]): ProposedJob {
  const { home, joins } = group;
  const days = files.flatMap(({ ownDay }) => ownDay ?? []).sort();
  // A folder that is split into days is one job in its days; the first of them is what the job is of.
  const day = group.day || days[0] || null;
  const stems = files.map(({ path }) => stemOf(nameOf(path)));
  const said = typeSaid([...home.path.split('/').reverse(), ...stems]);
  return {
    key: keyOf(home.path, group),
    home: home.path,
    day,
    lastDay: days.at(-1) ?? day,
    title: joins?.title ?? (titleOfHome(home) || sharedTitle(stems) || titleOfDay(day)),
    instrumentType: said?.type ?? 'other',
    typeWords: said?.words ?? null,
    joins,
    wholeFolder: group.day === null,
    takes: files.map(asPlanned),
  };
}

/** "Recordings of 14 March 2019" */
function titleOfDay(day: string | null): string {
  if (day === null) return 'Older recordings';
  const [year, month, date] = day.split('-').map(Number);
  const [name = ''] = monthsWritten[(month ?? 1) - 1] ?? [];
  return `Recordings of ${date} ${name.charAt(0).toUpperCase()}${name.slice(1)} ${year}`;
}

function asPlanned({ path, durationMs, dated, ownDay, captions, use }: Placed): PlannedTake {
  const { from, cameraDay } = dated;
  const captionsOnly = use?.here === true;
  return { path, name: nameOf(path), durationMs, day: ownDay, from, cameraDay, captions, captionsOnly };
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1);
}

function byDay(a: ProposedJob, b: ProposedJob): number {
  const [one, other] = [a.day ?? '9999', b.day ?? '9999'];
  if (one !== other) return one < other ? -1 : 1;
  return a.home.localeCompare(b.home, 'en', { numeric: true });
}

function grouped<T>(items: readonly T[], keyOfItem: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOfItem(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}
