import type { Nodes, Table } from 'mdast';
import { readMarkdown } from './markdown';

/** Markdown as plain text: no signs of markup, tables in columns, a drawing as it stands. */
export function plainText(markdown: string): string {
  return blocksOf(readMarkdown(markdown)).join('\n\n');
}

const aTime = /^(?:\d+:)?\d{1,2}:\d\d$/;

function blocksOf(node: Nodes): string[] {
  return childrenOf(node)
    .map(block)
    .filter((text) => text !== '');
}

function block(node: Nodes): string {
  switch (node.type) {
    case 'list':
      return node.children
        .map((item, at) => listItem(item, node.ordered ? `${(node.start ?? 1) + at}. ` : '- '))
        .join('\n');
    case 'table':
      return tableText(node);
    case 'blockquote':
      return indented(blocksOf(node).join('\n\n'), '> ', '> ');
    case 'code':
      return node.value;
    case 'thematicBreak':
      return '* * *';
    case 'definition':
      return '';
    default:
      return inline(node);
  }
}

/** An item that begins with a time has no bullet: hosts of videos look for times where lines begin (common practice, no source). */
function listItem(node: Nodes, bullet: string): string {
  const text = blocksOf(node).join('\n');
  const [first = ''] = text.split(' ');
  return bullet === '- ' && aTime.test(first) ? text : indented(text, bullet, ' '.repeat(bullet.length));
}

function indented(text: string, first: string, more: string): string {
  return text
    .split('\n')
    .map((line, at) => `${at === 0 ? first : more}${line}`.trimEnd())
    .join('\n');
}

function inline(node: Nodes): string {
  if (node.type === 'break') return '\n';
  if ('value' in node) return node.value;
  const text = childrenOf(node).map(inline).join('');
  if (node.type !== 'link' || aTime.test(text) || text === node.url) return text;
  return text === '' ? node.url : `${text} (${node.url})`;
}

function childrenOf(node: Nodes): Nodes[] {
  return 'children' in node ? node.children : [];
}

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });
const widthOf = (text: string): number => [...letters.segment(text)].length;

function tableText({ children }: Table): string {
  const rows = children.map((row) => row.children.map((cell) => inline(cell)));
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => widthOf(row[at] ?? ''))));
  const [head, ...body] = rows;
  const line = (cells: readonly string[]) =>
    widths
      .map((width, at) => (cells[at] ?? '') + ' '.repeat(width - widthOf(cells[at] ?? '')))
      .join('  ')
      .trimEnd();
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  return [line(head ?? []), rule, ...body.map(line)].join('\n');
}
