import type { ColourName } from '@/lib/wiring';

/** Inks for conductor insulation; the letter code beside it says the colour to those who do not see it. */
export const conductorInks: Record<ColourName, string> = {
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

interface SwatchProps {
  colours: readonly ColourName[];
  /** Bare metal: braid, drain wire, frame. */
  bare?: boolean;
}

/** A short end of a conductor, striped where it has two colours, braided where it is bare. */
export function ConductorSwatch({ colours, bare = false }: SwatchProps) {
  const [ground, stripe] = colours;
  return (
    <svg width="56" height="16" viewBox="0 0 56 16" aria-hidden="true">
      <rect
        x="1"
        y="3"
        width="42"
        height="10"
        rx={bare ? 1 : 5}
        fill={ground ? conductorInks[ground] : 'var(--paper-sunk)'}
        stroke="var(--ink)"
      />
      {stripe && (
        <path d="M8 12.5 14 3.5M20 12.5l6-9M32 12.5l6-9" stroke={conductorInks[stripe]} strokeWidth="4" />
      )}
      {bare && (
        <path
          d="M4 4l6 8M10 4l6 8M16 4l6 8M22 4l6 8M28 4l6 8M34 4l6 8M10 4l-6 8M16 4l-6 8M22 4l-6 8M28 4l-6 8M34 4l-6 8M40 4l-6 8"
          stroke="var(--ink)"
          fill="none"
        />
      )}
      <path d="M43 8h12" stroke="var(--brass-bright)" strokeWidth="3" />
    </svg>
  );
}
