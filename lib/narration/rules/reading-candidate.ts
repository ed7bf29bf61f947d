import type { HeardProposal } from '@/shared/narration';
import type { TokenSpan } from '../words/token';

export type ReadingPayload = Extract<HeardProposal, { type: 'reading' }>['payload'];

/** A reading before repeats and corrections are sorted out. */
export interface ReadingCandidate extends TokenSpan {
  readonly payload: ReadingPayload;
  readonly confidence: number;
  /** True when the subject or the pair was said with this very value, and not carried on. */
  readonly ownSubject: boolean;
  readonly about: string | null;
}

export const emptyReading: ReadingPayload = {
  kind: '',
  value: null,
  digits: null,
  open: false,
  unit: '',
  between: null,
  subject: '',
  sign: null,
};
