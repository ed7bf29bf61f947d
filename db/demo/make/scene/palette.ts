/** Kraft paper, cork and ink under a warm lamp. */
export const palette = {
  ink: '#36261a',
  wood: '#c69a64',
  woodDark: '#a87a48',
  woodLight: '#d9b582',
  cork: '#b78a5c',
  corkDark: '#94683f',
  corkLight: '#d2a877',
  paper: '#eddcb8',
  paperDark: '#d3bd90',
  body: '#5e8a80',
  bodyLight: '#7fa698',
  bodyDark: '#416760',
  fingerboard: '#5a3b27',
  maple: '#dcb77d',
  brass: '#c59a45',
  steel: '#b9b4a8',
  steelDark: '#7f7a70',
  cream: '#efe3c6',
  black: '#2a2420',
  cavity: '#4b3626',
  meterCase: '#8c3f30',
  meterFace: '#d9c7a0',
  glass: '#c8d2b2',
  segment: '#1f2a1e',
  bakelite: '#43291d',
  leadRed: '#b03a2b',
  leadBlack: '#2c2723',
  tea: '#8a5527',
} as const;

/** The conductors of the neck pickup's cable, in their insulation's colours. */
export const conductorColours = {
  red: '#c23f2d',
  white: '#f6eedb',
  green: '#3f7d43',
  black: '#25201d',
  bare: '#a59a86',
} as const;

export type Conductor = keyof typeof conductorColours;
export const conductors: Conductor[] = ['red', 'white', 'bare', 'green', 'black'];
