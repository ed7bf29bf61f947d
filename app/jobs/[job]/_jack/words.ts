import { sayOhms } from '@/lib/wiring';
import type { JackCheck, JackExplanation, JackSetting, OhmsRange } from '@/shared/jack';

/** ["8.05 kΩ", "7.89 kΩ to 8.21 kΩ"], ["open"], ["next to nothing", "below 22 Ω"]. */
export function sayExpected({ ohms, leastOhms, mostOhms }: OhmsRange): string[] {
  if (ohms === null) return ['open'];
  if (ohms === 0) return ['next to nothing', ...(mostOhms === null ? [] : [`below ${sayOhms(mostOhms)}`])];
  const [least, most] = [leastOhms, mostOhms].map((limit) => (limit === null ? 'open' : inThree(limit)));
  return [inThree(ohms), `${least} to ${most}`];
}

/** As it is read off a meter: three figures. */
function inThree(ohms: number): string {
  return sayOhms(Number(ohms.toPrecision(3)));
}

/** What the numbers of an explanation are, without its title again. */
export function sayNumbers({ title, text }: JackExplanation): string {
  const isTitled = text.toLowerCase().startsWith(`${title.toLowerCase()}: `);
  return isTitled ? text.slice(title.length + 2) : text;
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
