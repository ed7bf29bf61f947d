import type { ColourName } from '@/lib/wiring';

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

/** Insulation of conductors; the letter code and the dashes tell them apart without colour. */
export const conductorInks: Readonly<Record<ColourName, string>> = {
  black: '#1b1a19',
  brown: '#6b3f1d',
  red: '#b3211c',
  orange: '#d9701a',
  yellow: '#e3bb24',
  green: '#2c7a3f',
  blue: '#275a9c',
  violet: '#6d4496',
  grey: '#87857f',
  white: '#f7f4ec',
  pink: '#d98a9c',
  gold: '#a98a3c',
  turquoise: '#2d9a96',
  silver: '#b9bcbd',
};

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
