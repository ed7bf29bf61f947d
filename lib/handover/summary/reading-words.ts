import type { ReadingKindId } from '@/shared/readings';

/** What a change of a value means to who plays the instrument. Common practice, no source. */
export interface ChangeWords {
  /** What the value is called in a sentence; empty for the label of the kind. */
  called: string;
  more: string;
  less: string;
}

const plain: ChangeWords = { called: '', more: 'more than before', less: 'less than before' };

/** Kinds that need words of their own; the others are told with "more" and "less". */
const ownWords: Partial<Record<ReadingKindId, ChangeWords>> = {
  resistance: { called: '', more: 'higher than before', less: 'lower than before' },
  'string-height': {
    called: 'string height',
    more: 'the strings lie higher',
    less: 'the strings lie lower',
  },
  relief: { called: 'neck relief', more: 'the neck has more bow', less: 'the neck is straighter' },
  'nut-slot-depth': {
    called: 'nut slot',
    more: 'more than before',
    less: 'less than before',
  },
  'fret-height': { called: 'fret height', more: 'higher frets', less: 'lower frets' },
  intonation: { called: 'intonation', more: 'sharper than before', less: 'flatter than before' },
  'pickup-height': { called: 'pickup height', more: 'more than before', less: 'less than before' },
  pitch: { called: 'pitch', more: 'tuned higher', less: 'tuned lower' },
  humidity: { called: 'humidity', more: 'damper than before', less: 'drier than before' },
  temperature: { called: 'temperature', more: 'warmer than before', less: 'cooler than before' },
  mass: { called: 'weight', more: 'heavier', less: 'lighter' },
  'string-tension': { called: 'string tension', more: 'tighter', less: 'slacker' },
  'plate-voltage': { called: 'plate voltage', more: plain.more, less: plain.less },
  'bias-current': { called: 'bias current', more: plain.more, less: plain.less },
};

export function changeWordsOf(kind: ReadingKindId): ChangeWords {
  return ownWords[kind] ?? plain;
}
