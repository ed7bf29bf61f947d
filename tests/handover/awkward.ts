import type { Chapter } from '@/lib/film';

/** Titles that have to come through every format as they are. */
export const awkwardTitles: readonly string[] = [
  'Pots & <caps> --> jack',
  'a=b; c#d \\ e "f" \'g\'',
  '[CHAPTER] ;FFMETADATA1',
  ']]> &amp; &#10; <!-- -->',
  'Łódź, ½ turn, 47 nF ±10 %',
  'Κιθάρα και бас-гитара 琴の修理',
  'שלום 12 kΩ עולם',
  'عزف على العود (٣)',
  'Family 👨‍👩‍👧‍👦, flag 🇳🇴, guitar 🎸',
  '0:42 not a time',
  `${'Ünïcode 🎸 שלום '.repeat(20)}`.slice(0, 300).trim(),
];

/** Titles that no format may take over as they are, and what they read as. */
export const brokenTitles: readonly [string, string][] = [
  ['two\nlines\r\n\r\n00:00.000 --> 00:01.000', 'two lines 00:00.000 --> 00:01.000'],
  ['title\n[CHAPTER]\nSTART=0', 'title [CHAPTER] START=0'],
  ['bell \u0007 null \u0000 escape \u001b[31m', 'bell null escape [31m'],
  ['next\u0085line, separator\u2028paragraph\u2029end', 'next line, separator paragraph end'],
  ['half a letter \ud83c', 'half a letter \ufffd'],
  ['no character \uffff\ufffe', 'no character \ufffd\ufffd'],
  ['  \t spaces  ', 'spaces'],
];

/** Chapters of 20 seconds, one a title. */
export function chaptersNamed(titles: readonly string[]): Chapter[] {
  return titles.map((title, index) => ({ startMs: index * 20_000, endMs: (index + 1) * 20_000, title }));
}
