/** Markup that was built here: only `element` makes it, so no text of the record can turn into markup. */
export interface Html {
  readonly html: string;
}

/** What goes into an element: text is escaped, nothing is left out. */
export type Content = Html | string | null | readonly Content[];
type Attributes = Readonly<Record<string, string | true | null>>;

/** WHATWG HTML, section 13.1.2: these have neither content nor an end tag. */
const empty: ReadonlySet<string> = new Set(['meta', 'link', 'input', 'br']);

/** An element; an attribute that is null is left out, one that is true stands alone. */
export function element(name: string, attributes: Attributes, ...content: readonly Content[]): Html {
  const told = Object.entries(attributes).flatMap(([key, value]) => {
    if (value === null) return [];
    return value === true ? ` ${key}` : ` ${key}="${escaped(value)}"`;
  });
  const open = `<${name}${told.join('')}>`;
  return { html: empty.has(name) ? open : `${open}${htmlOf(content)}</${name}>` };
}

/** Words of the record: they run in the direction of their own letters and turn nothing around them. */
export function said(text: string): Html {
  return element('bdi', {}, text);
}

/** A whole document. */
export function documentOf(head: Content, body: Content): string {
  const root = element('html', { lang: 'en' }, element('head', {}, head), element('body', {}, body));
  return `<!DOCTYPE html>\n${root.html}\n`;
}

function htmlOf(content: Content): string {
  if (content === null) return '';
  if (typeof content === 'string') return escaped(content);
  return 'html' in content ? content.html : content.map(htmlOf).join('');
}

/** WHATWG HTML, section 13.3, and without the characters that section 3.2.5 keeps out of a text. */
function escaped(text: string): string {
  return text
    .replace(/[\p{Surrogate}\p{Noncharacter_Code_Point}]/gu, '\uFFFD')
    .replace(/[^\P{Control}\n\t]/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
