/** Runs in the pages that go out: answers the line on the first page. Built by build.mjs into one file of its own. */

import { isSearchData, type LookedUp, lookUp } from './look-up';

const form = document.getElementById('search');
const question = document.getElementById('question');
const told = document.getElementById('told');
const found = document.getElementById('found');
const data: unknown = Reflect.get(window, 'archiveData');

if (
  form instanceof HTMLFormElement &&
  question instanceof HTMLInputElement &&
  told &&
  found &&
  isSearchData(data)
) {
  const show = () => {
    const asked = question.value.trim();
    const jobs = asked === '' ? [] : lookUp(data, asked);
    told.textContent = asked === '' ? '' : sayCount(jobs.length);
    found.replaceChildren(...jobs.map(line));
    const address = new URL(location.href);
    if (asked === '') address.searchParams.delete('q');
    else address.searchParams.set('q', asked);
    // The address is the question, so that it can be passed on; on a page from a disk it may not be changed.
    if (location.protocol.startsWith('http')) history.replaceState(null, '', address);
  };
  form.hidden = false;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    show();
  });
  question.addEventListener('input', show);
  question.value = new URLSearchParams(location.search).get('q') ?? '';
  show();
}

function sayCount(jobs: number): string {
  if (jobs === 0) return 'Nothing answers that. Fewer words, or others, may.';
  return jobs === 1 ? 'One job answers.' : `${jobs} jobs answer.`;
}

function line({ page, title, day, moments }: LookedUp): HTMLElement {
  const own = make('li', [link(page, title), ` ${day}`]);
  const places = moments.map(({ anchor, shown }) => make('li', [link(`${page}#${anchor}`, shown)]));
  if (places.length > 0) own.append(make('ul', places));
  return own;
}

function link(href: string, words: string): HTMLElement {
  const own = document.createElement('a');
  own.href = href;
  own.append(make('bdi', [words]));
  return own;
}

function make(name: string, content: readonly (Node | string)[]): HTMLElement {
  const own = document.createElement(name);
  own.append(...content);
  return own;
}
