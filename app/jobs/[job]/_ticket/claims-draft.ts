import type { Claim, ClaimKind } from '@/shared/claims';

/** The part of a claim that a person writes. */
export type WrittenClaim = Omit<Claim, 'id' | 'instrumentId' | 'jobId'>;

/** A claim as it is being written: empty lines where nothing is said. */
export type Draft = Omit<WrittenClaim, 'subject' | 'evidence'> & { subject: string; evidence: string };

export function draftOf(claim?: Claim): Draft {
  return {
    kind: claim?.kind ?? 'year',
    subject: claim?.subject ?? '',
    value: claim?.value ?? '',
    basis: claim?.basis ?? 'stated',
    sure: claim?.sure ?? 'likely',
    evidence: claim?.evidence ?? '',
    moment: claim?.moment ?? null,
    readingId: claim?.readingId ?? null,
  };
}

export function claimOf({ subject, evidence, value, ...rest }: Draft): WrittenClaim {
  return {
    ...rest,
    value: value.trim(),
    subject: subject.trim() || null,
    evidence: evidence.trim() || null,
  };
}

interface SubjectWords {
  label: string;
  hint: string;
  required: boolean;
  example: string;
}

/** What the lines of the form ask, by the kind of claim. */
export const subjectWords: Record<ClaimKind, SubjectWords> = {
  year: {
    label: 'Of which part',
    hint: 'Empty for the whole instrument.',
    required: false,
    example: 'Such as 1978, 1978–80, late 70s, before 1980.',
  },
  factory: {
    label: 'Of which part',
    hint: 'Empty for the whole instrument.',
    required: false,
    example: 'The place where it was built.',
  },
  'original part': {
    label: 'Which part',
    hint: 'Such as neck pickup, bridge, tuners.',
    required: true,
    example: 'Such as original, replaced, rewound.',
  },
  other: {
    label: 'About',
    hint: 'Such as finish. Claims about the same thing are held against each other.',
    required: false,
    example: 'Such as refinished.',
  },
};
