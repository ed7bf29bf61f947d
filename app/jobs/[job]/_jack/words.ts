import { sayOhms } from '@/lib/wiring';
import type { ExpectedReading, JackCheck, JackExplanation, JackSetting, OhmsRange } from '@/shared/jack';

/** "8.05 kΩ, 7.89 to 8.21 kΩ", "open", "next to nothing, below 22 Ω". */
export function sayExpected({ outcome, ...range }: OhmsRange & Pick<ExpectedReading, 'outcome'>): string {
  if (outcome === 'open') return 'open';
  if (outcome === 'short') {
    return range.mostOhms === null ? 'next to nothing' : `next to nothing, below ${sayOhms(range.mostOhms)}`;
  }
  return range.ohms === null ? 'open' : `${sayOhms(range.ohms)}, ${sayLimits(range)}`;
}

/** Limits as they are read off a meter: three figures. */
export function sayLimits({ leastOhms, mostOhms }: OhmsRange): string {
  const [least, most] = [leastOhms, mostOhms].map((limit) =>
    limit === null ? 'open' : sayOhms(Number(limit.toPrecision(3))),
  );
  return `${least} to ${most}`;
}

export const verdictWords: Record<JackCheck['verdict'] | 'unread', { mark: string; word: string }> = {
  pass: { mark: '✓', word: 'fits' },
  fail: { mark: '✕', word: 'does not fit' },
  'cannot say': { mark: '?', word: 'cannot say' },
  unread: { mark: '·', word: 'not read' },
};

/** A share of belief in words. */
export function sayLikelihood({ likelihood, explainsAll }: JackExplanation): string {
  if (!explainsAll) return 'explains a part only';
  if (likelihood >= 0.6) return 'most likely';
  if (likelihood >= 0.25) return 'likely';
  return likelihood >= 0.08 ? 'possible' : 'less likely';
}

/** The same for the same setting of one harness. */
export function settingKey({ position, thrown, down }: JackSetting): string {
  return JSON.stringify([position, thrown, down]);
}
