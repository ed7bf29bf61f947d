/** A text made plain for comparing, and where each of its characters stands in the original (UTF-16 units). */
export interface FoldedText {
  readonly text: string;
  readonly from: readonly number[];
  readonly to: readonly number[];
}

const DIGITS_OF_A_SCRIPT = 10;

/** The value of a decimal digit of any script: Unicode keeps each script's ten in a row. */
function digitOf(digit: string): string {
  const code = digit.codePointAt(0) ?? 0;
  let before = 0;
  while (before < DIGITS_OF_A_SCRIPT && /\p{Nd}/u.test(String.fromCodePoint(code - before - 1))) before++;
  return String(before % DIGITS_OF_A_SCRIPT);
}

function foldOne(character: string): string {
  if (/^[ -_a-~]$/.test(character)) return character.toLowerCase();
  return character
    .normalize('NFKD')
    .replace(/[\p{M}\p{Cf}]/gu, '')
    .toLowerCase()
    .replace(/ς/g, 'σ')
    .replace(/ß/g, 'ss')
    .replace(/[’‘`´]/g, "'")
    .replace(/\s/g, ' ')
    .replace(/\p{Nd}/gu, digitOf)
    .normalize('NFC');
}

/** Lower case, without accents and signs of direction, digits of any script as 0 to 9. */
export function fold(original: string): FoldedText {
  const from: number[] = [];
  const to: number[] = [];
  let text = '';
  let at = 0;
  for (const character of original) {
    const end = at + character.length;
    const folded = foldOne(character);
    // An accent of its own belongs to the letter before it.
    if (folded === '' && to.length > 0 && /\p{M}/u.test(character)) to[to.length - 1] = end;
    for (let unit = 0; unit < folded.length; unit++) {
      from.push(at);
      to.push(end);
    }
    text += folded;
    at = end;
  }
  return { text, from, to };
}
