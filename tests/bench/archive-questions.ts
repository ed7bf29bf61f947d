import { said, seldom } from './archive-made';

/** 200 questions as they are typed, from one very common word to a half sentence. */
export function questionsOfBench(): string[] {
  const word = (nth: number) => said[nth % said.length] ?? 'hum';
  const common = (nth: number) => word(nth % 12);
  const kinds: ((nth: number) => string)[] = [
    (nth) => common(nth),
    (nth) => `${common(nth)} ${common(nth + 3)}`,
    (nth) => `${common(nth)} ${common(nth + 1)} ${common(nth + 2)}`,
    (nth) => word(nth * 7 + 20),
    (nth) => `${common(nth)} ${word(nth * 11 + 30)}`,
    (nth) => `how did i get rid of the ${word(nth * 5 + 3)} on that ${common(nth)} ${word(nth * 3 + 40)}`,
    (nth) => seldom(nth * nth * 3),
    (nth) => `${seldom(nth * 13)} ${common(nth)}`,
    (nth) => `${common(nth)} ${word(nth + 9)} last spring`,
    (nth) => `${(3 + (nth % 9) + 0.1).toFixed(1)}k ${common(nth)}`,
  ];
  return Array.from(
    { length: 200 },
    (_, nth) => kinds[nth % kinds.length]?.(Math.floor(nth / kinds.length)) ?? '',
  );
}
