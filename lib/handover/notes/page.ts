import type { ComposedNote } from '@/shared/notes';
import { markupText } from '../title';
import { setOut } from './blocks';
import { htmlOf, publicMarkdown, writeMarkdown } from './markdown';

/** One HTML page that asks for nothing from anywhere and runs nothing: the policy in it says so to the browser. */
export function notesPage(notes: readonly ComposedNote[], title: string): string {
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${markupText(title)}</title>`,
    `<style>${style}</style>`,
    '</head>',
    '<body>',
    `<h1>${markupText(title)}</h1>`,
    ...notes.map(section),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function section(note: ComposedNote): string {
  const written = htmlOf(publicMarkdown(note));
  const drawn = note.drawings.reduce(
    (html, drawing) => html.replace(inHtml(drawing.text), () => `<figure>${drawing.svg}</figure>`),
    written,
  );
  return `<section>\n<h2>${markupText(note.heading)}</h2>\n${drawn}\n</section>`;
}

/** A drawing in letters as it comes out of the Markdown that it was put into. */
function inHtml(drawing: string): string {
  return htmlOf(writeMarkdown([setOut(drawing)]));
}

/** `plaintext`: each paragraph runs in the direction of its own first letter (CSS Writing Modes 4, section 2.2). */
const style = `
body { max-width: 46rem; margin: 2rem auto; padding: 0 1rem; font: 1rem/1.5 sans-serif; color: #1b1a19; background: #fff; overflow-wrap: anywhere; }
p, li, td, th, h1, h2, h3, h4, h5, h6 { unicode-bidi: plaintext; text-align: start; }
h1, h2, h3 { line-height: 1.2; }
table { border-collapse: collapse; display: block; overflow-x: auto; }
th, td { border: 1px solid #b9b4a8; padding: 0.25rem 0.6rem; text-align: start; vertical-align: top; overflow-wrap: break-word; }
pre { overflow-x: auto; }
figure { margin: 1rem 0; }
svg { max-width: 100%; height: auto; }
`;
