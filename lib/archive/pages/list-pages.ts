import { instrumentTypes } from '@/shared/instruments';
import { page, wideTable } from './frame';
import { type Content, element, said } from './html';
import { sayCable } from './job-page';
import type { ConductorRow } from './tables';

/** What the lists tell of a job. */
export interface ListedJob {
  page: string;
  title: string;
  /** Type of its instrument. */
  type: string;
  day: string;
}

/** The first page: a line to search by, and all jobs by instrument type, which is there without scripts too. */
export function indexPage(jobs: readonly ListedJob[], made: string): string {
  return page(
    { title: 'Repairs on film', up: '', scripts: ['data.js', 'search.js'], made },
    element('h1', {}, 'Repairs on film'),
    element(
      'p',
      {},
      `${jobs.length} ${jobs.length === 1 ? 'job' : 'jobs'}, with what was read, traced and joined.`,
    ),
    searchForm(),
    groupsOf(jobs).map(({ type, own }) =>
      element('section', {}, element('h2', {}, said(type)), element('ul', { class: 'jobs' }, own.map(line))),
    ),
    element(
      'p',
      { class: 'soft' },
      'The same as tables: ',
      ['moments.csv', 'readings.csv', 'conductors.csv', 'archive.json'].flatMap((name, at) => [
        at === 0 ? '' : ', ',
        element('a', { href: name }, name),
      ]),
      '.',
    ),
  );
}

/** Out of sight until the script is there that answers it. */
function searchForm(): Content {
  return element(
    'search',
    {},
    element(
      'form',
      { id: 'search', hidden: true },
      element('label', { for: 'question' }, 'Find a moment'),
      element('input', { id: 'question', type: 'search', name: 'q', autocomplete: 'off' }),
      element('button', { type: 'submit' }, 'Find'),
    ),
    element('p', { id: 'told', role: 'status' }),
    element('ol', { id: 'found' }),
  );
}

function line({ page: href, title, day }: ListedJob): Content {
  return element('li', {}, element('a', { href }, said(title)), ' ', element('span', { class: 'soft' }, day));
}

/** Types in the order of the workshop's list, its own types after them; in each the newest job first. */
function groupsOf(jobs: readonly ListedJob[]): { type: string; own: ListedJob[] }[] {
  const rank = new Map<string, number>(instrumentTypes.map((type, at) => [type, at]));
  const rankOf = (type: string) => rank.get(type) ?? instrumentTypes.length;
  const types = [...new Set(jobs.map(({ type }) => type))].sort(
    (a, b) => rankOf(a) - rankOf(b) || (a < b ? -1 : 1),
  );
  return types.map((type) => ({
    type,
    own: jobs
      .filter((job) => job.type === type)
      .sort((a, b) => (a.day === b.day ? (a.page < b.page ? 1 : -1) : a.day < b.day ? 1 : -1)),
  }));
}

/** What cables turned out to be. */
export function conductorsPage(rows: readonly ConductorRow[], made: string): string {
  return page(
    { title: 'Pickups traced', up: '', made },
    element('h1', {}, 'Pickups traced'),
    element(
      'p',
      {},
      'This is what the conductors of these very pickups turned out to be. Makers change colours, and cables are replaced: another pickup with the same colours must still be measured.',
    ),
    rows.length === 0
      ? element('p', {}, 'Nothing was joined in these jobs yet.')
      : wideTable(
          'Every conductor, what became of it, and how that is known',
          ['Cable', 'Pickup', 'Conductor', 'Role', 'Where to', 'Basis', 'Job'],
          rows.map((row) => [
            element('td', {}, said(sayCable(row))),
            element('td', {}, said(row.pickup)),
            element('td', {}, said(row.conductor)),
            element('td', {}, row.role),
            element('td', {}, said(row.goesTo)),
            element('td', {}, row.basis),
            element('td', {}, element('a', { href: `${row.page}#${row.anchor}` }, said(row.title))),
          ]),
        ),
  );
}
