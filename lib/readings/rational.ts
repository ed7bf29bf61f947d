/** An exact fraction; the denominator is positive. */
export interface Rational {
  top: bigint;
  bottom: bigint;
}

export function rational(top: bigint, bottom = 1n): Rational {
  return bottom < 0n ? { top: -top, bottom: -bottom } : { top, bottom };
}

/** Reads digits as they stand ("4.08", ".010", "−3", "1,5") exactly. Null for anything else. */
export function readDigits(text: string): Rational | null {
  const match = /^([-+−]?)(\d*)(?:[.,](\d*))?$/.exec(text.trim());
  const [, sign = '', whole = '', part = ''] = match ?? [];
  if (!match || whole + part === '') return null;
  const top = BigInt(whole + part);
  return rational(sign === '-' || sign === '−' ? -top : top, 10n ** BigInt(part.length));
}

/** Digits after the point, as they were shown. */
export function decimalsOf(text: string): number {
  return /[.,](\d*)/.exec(text)?.[1]?.length ?? 0;
}

export function times(a: Rational, b: Rational): Rational {
  return rational(a.top * b.top, a.bottom * b.bottom);
}

export function plus(a: Rational, b: Rational): Rational {
  return rational(a.top * b.bottom + b.top * a.bottom, a.bottom * b.bottom);
}

export function inverse(a: Rational): Rational {
  return rational(a.bottom, a.top);
}

export function negated(a: Rational): Rational {
  return rational(-a.top, a.bottom);
}

/** The nearest number; exact wherever the digits are. */
export function toNumber({ top, bottom }: Rational): number {
  return Number(roundedText({ top, bottom }, 30));
}

/** With so many digits after the point, halves away from zero. */
export function roundedText({ top, bottom }: Rational, decimals: number): string {
  const scale = 10n ** BigInt(decimals);
  const size = top < 0n ? -top : top;
  const scaled = (2n * size * scale + bottom) / (2n * bottom);
  const digits = scaled.toString().padStart(decimals + 1, '0');
  const sign = top < 0n && scaled > 0n ? '-' : '';
  return decimals === 0 ? sign + digits : `${sign}${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}
