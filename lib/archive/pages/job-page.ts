import { shortTime } from '@/lib/film';
import { kindOf } from '@/lib/readings';
import type { PublicJob } from '@/shared/archive-exports';
import { page, wideTable } from './frame';
import { type Content, element, said } from './html';
import { sayInstrument } from './told-public';

/** Where the page of a job lies in the set. */
export function pageOf(number: number): string {
  return `jobs/${String(number).padStart(4, '0')}.html`;
}

/** A place on the page of a job, the nth of its sort. */
export const anchors = {
  chapter: (nth: number) => `chapter-${nth + 1}`,
  reading: (nth: number) => `reading-${nth + 1}`,
  trace: (nth: number) => `trace-${nth + 1}`,
  done: (nth: number) => `done-${nth + 1}`,
};

/** The page of a job: what went on, what was read, what turned out and was joined, what was done. */
export function jobPage(job: PublicJob, made: string): string {
  return page(
    { title: job.title, up: '../', made },
    element('h1', {}, said(job.title)),
    element('p', { class: 'soft' }, said(sayInstrument(job.instrument)), ` · ${job.day}`),
    section('On film', chapters(job)),
    section('What was measured', readings(job)),
    section('Traced and joined', job.traces.map(trace)),
    section('What was done', done(job)),
  );
}

/** Stands where a job was withdrawn while the set was made. */
export function leftOutPage(made: string): string {
  return page(
    { title: 'Not published', up: '../', made },
    element('h1', {}, 'Not published'),
    element('p', {}, 'This job is not part of the set.'),
  );
}

function section(heading: string, content: Content): Content {
  const isEmpty = content === null || (Array.isArray(content) && content.length === 0);
  return isEmpty ? null : element('section', {}, element('h2', {}, heading), content);
}

function chapters(job: PublicJob): Content {
  if (job.chapters.length === 0) return null;
  return element(
    'ol',
    { class: 'chapters' },
    job.chapters.map(({ atMs, kind, title, note }, nth) =>
      element(
        'li',
        { id: anchors.chapter(nth) },
        element('p', {}, time(atMs), element('span', { class: 'kind' }, kind), ' ', said(title)),
        note === null ? null : element('p', { class: 'soft' }, said(note)),
      ),
    ),
  );
}

function readings({ readings: all }: PublicJob): Content {
  if (all.length === 0) return null;
  const hasTimes = all.some(({ atMs }) => atMs !== null);
  const hasNotes = all.some(({ note }) => note !== null);
  return wideTable(
    'Readings in the order of the film, and how each is known',
    [...(hasTimes ? ['Time'] : []), 'What', 'Value', 'Basis', ...(hasNotes ? ['Note'] : [])],
    all.map(({ atMs, kind, subject, place, value, basis, note }, nth) => {
      const what = [subject, kindOf(kind).label.toLowerCase(), place].filter(Boolean).join(', ');
      return [
        hasTimes ? element('td', { class: 'figures' }, atMs === null ? '' : shortTime(atMs)) : null,
        element('td', { id: anchors.reading(nth) }, said(what)),
        element('td', { class: 'figures' }, said(value)),
        element('td', {}, basis),
        hasNotes ? element('td', {}, note === null ? '' : said(note)) : null,
      ];
    }),
  );
}

function trace(
  { subject, conductors, shield, follows, joined }: PublicJob['traces'][number],
  nth: number,
): Content {
  return [
    element('h3', { id: anchors.trace(nth) }, said(subject)),
    element('p', {}, 'Conductors: ', said(sayCable({ conductors, shield })), '.'),
    follows.length === 0
      ? null
      : element(
          'ul',
          {},
          follows.map(({ text, basis }) => element('li', {}, said(text), ` (${basis})`)),
        ),
    joined.map(({ atMs, title, basis, lines }) => [
      element(
        'p',
        {},
        'Joined',
        atMs === null ? '' : ` at ${shortTime(atMs)}`,
        ': ',
        said(title),
        ` (${basis}).`,
      ),
      wideTable(
        'What was joined to what, and how each is known',
        ['Role', 'Conductors', 'Where to', 'Basis'],
        lines.map(({ role, ends, goesTo, basis: known }) => [
          element('td', {}, role),
          element('td', {}, said(ends.join(' + '))),
          element('td', {}, said(goesTo)),
          element('td', {}, known),
        ]),
      ),
    ]),
  ];
}

/** "red, white, green, black, shield" */
export function sayCable({ conductors, shield }: { conductors: readonly string[]; shield: boolean }): string {
  return [...conductors, ...(shield ? ['shield'] : [])].join(', ');
}

function done(job: PublicJob): Content {
  if (job.done.length === 0) return null;
  return element(
    'ul',
    {},
    job.done.map(({ atMs, what }, nth) => element('li', { id: anchors.done(nth) }, time(atMs), said(what))),
  );
}

function time(atMs: number | null): Content {
  return atMs === null ? null : [element('span', { class: 'figures' }, shortTime(atMs)), ' '];
}
