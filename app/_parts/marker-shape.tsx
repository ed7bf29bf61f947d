import type { MarkerKind } from '@/shared/markers';

/** One drawn shape for each marker kind, so that none is told by its colour alone. 16 by 16 units. */
const shapes: Record<MarkerKind, React.ReactNode> = {
  // A tray that something is put into.
  intake: <path d="M2 7v7h12V7M8 1.5v7.5M5 6l3 3.5L11 6" fill="none" />,
  // A ring around the spot.
  diagnosis: (
    <>
      <circle cx="8" cy="8" r="6" fill="none" />
      <circle cx="8" cy="8" r="1.6" stroke="none" />
    </>
  ),
  // A dial with its needle.
  measurement: <path d="M1.5 12.5a6.5 6.5 0 0 1 13 0zM8 12.5 11.2 6" fill="none" />,
  // A nut.
  work: (
    <>
      <path d="M8 1.2 14 4.6v6.8L8 14.8 2 11.4V4.6z" fill="none" />
      <circle cx="8" cy="8" r="2.2" fill="none" />
    </>
  ),
  // A stamp pressed on the finished job.
  result: <path d="M3 2h10v12l-5-3-5 3z" />,
};

export function MarkerShape({ kind, size = 16 }: { kind: MarkerKind; size?: number }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 16 16"
      aria-hidden="true"
      fill={`var(--kind-${kind})`}
      stroke={`var(--kind-${kind})`}
      strokeWidth="1.6"
      strokeLinejoin="round"
      strokeLinecap="round"
    >
      {shapes[kind]}
    </svg>
  );
}

export const markerWords: Record<MarkerKind, string> = {
  intake: 'Intake',
  diagnosis: 'Diagnosis',
  measurement: 'Measurement',
  work: 'Work',
  result: 'Result',
};
