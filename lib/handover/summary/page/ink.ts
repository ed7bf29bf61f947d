/** The colours of the pages on white paper: each pair of text and ground keeps 4.5:1 (WCAG 2.2, 1.4.3). */
export const ink = {
  text: '#23201b',
  soft: '#5b5346',
  rule: '#cabd9f',
  strongRule: '#8d8064',
  brass: '#7d5210',
  brightBrass: '#b27a1c',
  verdigris: '#1d5b56',
  alarm: '#94261a',
  paper: '#fcf9f1',
} as const;

/** Measures in points, 72 to the inch. */
export const measure = {
  side: 50,
  top: 46,
  bottom: 58,
  body: { size: 10, leading: 13.6 },
  small: { size: 8.5, leading: 11.4 },
  label: { size: 7.6, leading: 10 },
  heading: { size: 13, leading: 17 },
  title: { size: 20, leading: 24 },
} as const;

/** ISO 216 A4 and US Letter (ANSI/ASME Y14.1, size A) in points. */
export const paperSizes = {
  a4: [595.28, 841.89],
  letter: [612, 792],
} as const;
