import { DomainError } from '@/shared/problem';

export class PriceError extends DomainError {
  constructor(text: string, digits: number) {
    super(
      'invalid',
      `“${text}” is not a price.`,
      digits === 0
        ? 'Write a whole number, such as 4500.'
        : `Write it with at most ${digits} digits after the point, such as 45 or 45.50.`,
      { text },
    );
  }
}

/** Digits after the point in prices of a currency (ISO 4217, minor unit): 2 for EUR, 0 for JPY, 3 for KWD. */
export function minorDigits(currency: string): number {
  return (
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}

/**
 * A price as people write it ("45", "45.50", "45,5", "1,200.50", "€ 45") in the smallest unit of its currency.
 * @throws PriceError
 */
export function parsePrice(text: string, currency: string): number {
  const digits = minorDigits(currency);
  const bare = text.replace(/^[\p{Sc}\p{L}\s]+|[\p{Sc}\p{L}\s]+$/gu, '').replace(/[\s'’]/g, '');
  const { whole, part } = splitAtPoint(bare, digits);
  if (!/^\d{1,9}$/.test(whole) || !/^\d*$/.test(part) || part.length > digits)
    throw new PriceError(text.trim(), digits);
  const minor = Number(whole + part.padEnd(digits, '0'));
  if (minor > 1_000_000_000) throw new PriceError(text.trim(), digits);
  return minor;
}

/** "€45.50", as it stands on the ticket. */
export function sayPrice(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  const padded = String(minor).padStart(digits + 1, '0');
  const decimal = digits === 0 ? padded : `${padded.slice(0, -digits)}.${padded.slice(-digits)}`;
  // As a decimal string, so that no float stands between (ECMA-402 takes the digits as they are).
  return new Intl.NumberFormat('en-GB', { style: 'currency', currency }).format(
    decimal as Intl.StringNumericLiteral,
  );
}

/** The last point or comma is the decimal one, unless three digits follow it and the currency has fewer. */
function splitAtPoint(bare: string, digits: number): { whole: string; part: string } {
  const at = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','));
  const part = at < 0 ? '' : bare.slice(at + 1);
  const isPoint = at >= 0 && (part.length !== 3 || digits === 3);
  const whole = (isPoint ? bare.slice(0, at) : bare).replace(grouping, '$1');
  return { whole: whole === '' ? '0' : whole, part: isPoint ? part : '' };
}

/** Thousands parted by a point or comma: only where three digits follow. */
const grouping = /(\d)[.,](?=\d{3}(?:[.,]|$))/g;
