import type { ColourName } from './colours';

/** Inks for conductor insulation; the letter code beside it says the colour to those who do not see it. */
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
