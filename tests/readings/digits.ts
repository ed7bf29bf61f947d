import fc from 'fast-check';

/** Digits as a meter shows them: 4.08, -3, .010, 000.5. */
export const digits = fc
  .record({
    sign: fc.constantFrom('', '', '-'),
    whole: fc.stringMatching(/^\d{1,6}$/),
    part: fc.option(fc.stringMatching(/^\d{1,6}$/)),
    bare: fc.boolean(),
  })
  .map(
    ({ sign, whole, part, bare }) =>
      `${sign}${bare && part !== null ? '' : whole}${part === null ? '' : `.${part}`}`,
  );

export function decimalsShown(text: string): number {
  return text.split('.')[1]?.length ?? 0;
}
