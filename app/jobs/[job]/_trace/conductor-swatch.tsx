import { type ColourName, conductorInks } from '@/lib/wiring';

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
