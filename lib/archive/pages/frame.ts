import { type Content, documentOf, element } from './html';

/**
 * Nothing from anywhere but this set, and nothing sent. `file:` beside 'self', because a page opened from a disk has no
 * origin of its own that a browser must take for 'self' (W3C CSP 3, section 6.7.2.8).
 */
const policy = [
  "default-src 'none'",
  "script-src 'self' file:",
  "style-src 'self' file:",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

export interface Frame {
  title: string;
  /** From the page to the folder of the set: '' or '../'. */
  up: string;
  scripts?: readonly string[];
  /** The day that stands below, by ISO 8601. */
  made: string;
}

/** A page of the set. */
export function page({ title, up, scripts = [], made }: Frame, ...content: readonly Content[]): string {
  return documentOf(
    [
      element('meta', { charset: 'utf-8' }),
      element('meta', { 'http-equiv': 'Content-Security-Policy', content: policy }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      element('meta', { name: 'referrer', content: 'no-referrer' }),
      element('title', {}, title),
      element('link', { rel: 'stylesheet', href: `${up}style.css` }),
      scripts.map((name) => element('script', { src: `${up}${name}`, defer: true })),
    ],
    [
      element('header', {}, ways(up)),
      element('main', {}, ...content),
      element('footer', {}, element('p', {}, `Made on ${made}.`)),
    ],
  );
}

function ways(up: string): Content {
  const way = (href: string, words: string) =>
    element('li', {}, element('a', { href: `${up}${href}` }, words));
  return element(
    'nav',
    { 'aria-label': 'Pages' },
    element('ul', {}, way('index.html', 'All jobs'), way('conductors.html', 'Pickups traced')),
  );
}

/** A table that may be wider than a phone: it scrolls by itself, by keyboard too. */
export function wideTable(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly Content[])[],
): Content {
  return element(
    'div',
    { class: 'wide', role: 'region', 'aria-label': caption, tabindex: '0' },
    element(
      'table',
      {},
      element('caption', {}, caption),
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          head.map((words) => element('th', { scope: 'col' }, words)),
        ),
      ),
      element(
        'tbody',
        {},
        rows.map((cells) => element('tr', {}, cells)),
      ),
    ),
  );
}
