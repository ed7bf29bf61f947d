import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { type FindableKind, findableKindSchema } from '@/shared/archive';
import { markerKindSchema } from '@/shared/markers';
import type { Basis } from '@/shared/readings';

export const findableWords: Readonly<Record<FindableKind, string>> = {
  marker: 'Marker',
  reading: 'Reading',
  trace: 'Trace',
  joint: 'Joints',
  work: 'Work item',
  part: 'Part',
  claim: 'Claim',
  instrument: 'Instrument',
  ticket: 'Ticket',
  narration: 'Said',
};

export const basisWords: Readonly<Record<Basis, string>> = {
  measured: 'Measured',
  implied: 'Implied',
  assumed: 'Assumed',
  stated: 'Stated',
};

/** One drawn shape for each kind of thing, so that none is told by its colour or its word alone. 16 by 16 units. */
const shapes: Readonly<Record<FindableKind, React.ReactNode>> = {
  // A pin stuck in.
  marker: <path d="M8 15V8M4 1.5h8l-1 3.5 1.5 3h-9L5 5z" />,
  // A stretch of an engraved scale.
  reading: <path d="M1.5 13.5h13M2.5 13V8M6 13V10M9.5 13V3M13 13V10" />,
  // A cable that opens into its conductors.
  trace: <path d="M1 8h5M6 8c3 0 3-5.5 9-5.5M6 8h9M6 8c3 0 3 5.5 9 5.5" />,
  // Two wires in one blob of solder.
  joint: (
    <>
      <path d="M1 3.5 6 7M1 12.5 6 9M11 8h4" />
      <circle cx="8" cy="8" r="3" fill="currentColor" />
    </>
  ),
  // A line of a list, ticked.
  work: <path d="M1.5 8.5 4 11l4-6.5M9.5 10.5h5M10.5 5.5h4" />,
  // A small box with its lid.
  part: <path d="M2 6.5h12V14H2zM1.5 3h13v3.5h-13zM6.5 9.5h3" />,
  // Something that is said of it, in its frame.
  claim: <path d="M1.5 2h13v9h-7L4 14.5V11H1.5zM5 5h6M5 8h4" />,
  // A body, a neck, a head.
  instrument: (
    <path d="M8 9V1.5M6.5 1.5h3M8 15c-3.5 0-4.5-2-3.5-3.8C3.6 9.6 5 8 8 8s4.4 1.6 3.5 3.2C12.5 13 11.5 15 8 15z" />
  ),
  // A tie-on ticket.
  ticket: (
    <>
      <path d="M5 2.5h9.5v11H5L1.5 8z" />
      <circle cx="5.8" cy="8" r="0.9" />
    </>
  ),
  // Waves that come from a mouth.
  narration: <path d="M2 6v4M5 4v8M8 1.5v13M11 4.5v7M14 6.5v3" />,
};

/** A kind of thing as its shape. */
export function FindableShape({ kind, size = 16 }: { kind: FindableKind; size?: number }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 16 16"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      strokeLinejoin="round"
      strokeLinecap="round"
    >
      {shapes[kind]}
    </svg>
  );
}

/** A kind that answers can be narrowed to: of marker, or of thing. Work is both. */
export function kindInWords(kind: string): string {
  const marker = markerKindSchema.safeParse(kind);
  if (marker.success) return markerWords[marker.data];
  const thing = findableKindSchema.safeParse(kind);
  return thing.success ? findableWords[thing.data] : kind;
}

export function KindShape({ kind }: { kind: string }) {
  const marker = markerKindSchema.safeParse(kind);
  if (marker.success) return <MarkerShape kind={marker.data} />;
  const thing = findableKindSchema.safeParse(kind);
  return thing.success ? <FindableShape kind={thing.data} /> : null;
}
