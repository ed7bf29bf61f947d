const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  lrm: '',
  rlm: '',
};

/** W3C WebVTT section 6.4 takes character references as HTML does; the named ones that captions use, and numbers. */
function decodeEntities(text: string): string {
  return text.replace(/&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]{2,5}));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return ENTITIES[String(name).toLowerCase()] ?? whole;
    const code = decimal === undefined ? Number.parseInt(hex, 16) : Number(decimal);
    return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}

/** Cue tags: `<i>`, `<c.loud>`, `<00:01.500>`, and the `<font …>` of SubRip. */
const TAG = /<\/?[a-z][^<>]{0,200}>|<\d[\d:.]{3,15}>/gi;
const VOICE = /<v(?:\.[^\s<>]{0,60})?[ \t]+([^<>]{1,120})>/gi;

export interface CueText {
  readonly text: string;
  readonly voice: string | null;
}

const clean = (rows: string): string =>
  decodeEntities(rows.replace(TAG, ''))
    .replace(/\p{Cc}|\u00ad|\u200b/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The spoken words of a cue, one entry for each voice in it. Rows are joined by a space. */
export function cueTexts(rows: readonly string[]): readonly CueText[] {
  const whole = rows.join('\n');
  const marks = [...whole.matchAll(VOICE)];
  const starts = [0, ...marks.map((mark) => mark.index), whole.length];
  return starts
    .slice(0, -1)
    .map((start, at) => ({
      text: clean(whole.slice(start, starts[at + 1])),
      voice: at === 0 ? null : clean(marks[at - 1]?.[1] ?? '') || null,
    }))
    .filter((part) => part.text !== '');
}
