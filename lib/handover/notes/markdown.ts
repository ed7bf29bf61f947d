import type { Nodes, Root, RootContent } from 'mdast';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown, gfmTableToMarkdown } from 'mdast-util-gfm-table';
import { type Options, toMarkdown } from 'mdast-util-to-markdown';
import { micromark } from 'micromark';
import { gfmTable, gfmTableHtml } from 'micromark-extension-gfm-table';
import type { ComposedNote } from '@/shared/notes';

/** CommonMark with tables. Markup of HTML is text, and a picture is a link: neither may act or be fetched. */
const reading = [gfmTable(), { disable: { null: ['htmlFlow', 'htmlText', 'labelStartImage'] } }];

const writing: Options = {
  bullet: '-',
  rule: '-',
  listItemIndent: 'one',
  incrementListMarker: true,
  resourceLink: true,
  // Hosts with more than CommonMark strike out what stands between these.
  unsafe: [{ character: '~', inConstruct: 'phrasing' }],
  extensions: [gfmTableToMarkdown({ tablePipeAlign: false })],
};

export function readMarkdown(text: string): Root {
  return fromMarkdown(printable(text), { extensions: reading, mdastExtensions: [gfmTableFromMarkdown()] });
}

export function writeMarkdown(children: readonly RootContent[]): string {
  return toMarkdown({ type: 'root', children: [...children] }, writing);
}

/** HTML of Markdown: what looks like HTML in it is text (micromark, `allowDangerousHtml` off). */
export function htmlOf(text: string): string {
  return micromark(text, { extensions: reading, htmlExtensions: [gfmTableHtml()] });
}

/**
 * The Markdown of a section as it may go public. What was written by hand loses HTML, pictures and every link but
 * to the web or by mail, and its headings stand below those of the sections; drafts are made so.
 */
export function publicMarkdown({ text, edited }: Pick<ComposedNote, 'text' | 'edited'>): string {
  return edited ? safeMarkdown(text) : text;
}

function safeMarkdown(text: string): string {
  return writeMarkdown(readMarkdown(text).children.flatMap(safeNode));
}

function safeNode(node: RootContent): RootContent[] {
  if (node.type === 'definition') return isSafeAddress(node.url) ? [node] : [];
  if (node.type === 'link' && !isSafeAddress(node.url)) return node.children.flatMap(safeNode);
  if (node.type === 'heading' && node.depth < 3) return [{ ...withSafeChildren(node), depth: 3 }];
  return [withSafeChildren(node)];
}

function withSafeChildren<N extends RootContent>(node: N): N {
  if (!hasChildren(node)) return node;
  return { ...node, children: node.children.flatMap(safeNode) };
}

function hasChildren<N extends Nodes>(node: N): node is N & { children: RootContent[] } {
  return 'children' in node;
}

function isSafeAddress(url: string): boolean {
  return /^(?:https?:|mailto:|#)/i.test(url);
}

/** Without what XML 1.0 (section 2.2) and HTML keep out of a text. */
function printable(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\p{Surrogate}\p{Noncharacter_Code_Point}]/gu, '\uFFFD')
    .replace(/[^\P{Control}\n\t]/gu, ' ');
}
