import type { Backlog, DateSource, JobRule, PlannedTake, ProposedJob } from '@/shared/backlog';

/** How the rules of what becomes a job are offered. */
export const ruleWords: Record<JobRule, string> = {
  usual: 'Named folders whole, the rest by day',
  folder: 'One job a folder',
  day: 'One job a day',
};

const sourceWords: Record<DateSource, string> = {
  recording: 'told by the recording',
  name: 'by its name',
  folder: 'by the name of its folder',
  file: 'by the date of the file',
  nothing: 'no date to be told',
};

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** "14 Mar 2019" */
export function dateInWords(day: string): string {
  const [year, month, date] = day.split('-');
  return `${Number(date)} ${months[Number(month) - 1]} ${year}`;
}

/** "14 Mar 2019 to 16 Mar 2019" */
export function daysInWords({ day, lastDay }: Pick<ProposedJob, 'day' | 'lastDay'>): string {
  if (day === null) return 'no date to be told: the day of import';
  return lastDay === null || lastDay === day
    ? dateInWords(day)
    : `${dateInWords(day)} to ${dateInWords(lastDay)}`;
}

const manySourceWords: Record<Exclude<DateSource, 'recording'>, string> = {
  name: 'dated by their names',
  folder: 'dated by the folder’s name',
  file: 'dated by the files',
  nothing: 'without a date',
};

/** Where the days of a job are known from, when the recordings themselves do not tell them. */
export function sourcesInWords(takes: readonly PlannedTake[]): string {
  const sources = new Set(takes.flatMap(({ from }) => (from === 'recording' ? [] : [from])));
  return [...sources].map((from) => manySourceWords[from]).join(', ');
}

/** One take: its day, where that is known from, and what the camera said otherwise. */
export function dayOfTakeInWords({ day, from, cameraDay }: PlannedTake): string {
  const told = day === null ? sourceWords[from] : `${dateInWords(day)}, ${sourceWords[from]}`;
  return cameraDay === null ? told : `${told} (the camera’s clock says ${dateInWords(cameraDay)})`;
}

/** "/home/me/Films, folder 2019" */
export function folderInWords({ folder, under }: Pick<Backlog, 'folder' | 'under'>): string {
  return under === '' ? folder.path : `${folder.path}, folder ${under}`;
}

/** "1 h 05 min", "12 min", "40 s" */
export function lengthInWords(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  if (minutes === 0) return `${Math.round(ms / 1000)} s`;
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}
