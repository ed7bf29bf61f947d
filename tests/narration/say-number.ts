const SMALL =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = '_ _ twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function belowHundred(value: number): string {
  if (value < 20) return SMALL[value] ?? '';
  const unit = value % 10;
  const tens = TENS[Math.floor(value / 10)] ?? '';
  return unit === 0 ? tens : `${tens} ${SMALL[unit]}`;
}

function belowThousand(value: number, british: boolean): string {
  if (value < 100) return belowHundred(value);
  const rest = value % 100;
  const hundreds = `${SMALL[Math.floor(value / 100)]} hundred`;
  return rest === 0 ? hundreds : `${hundreds} ${british ? 'and ' : ''}${belowHundred(rest)}`;
}

/** A whole number below a thousand million in words; British English puts an "and" before the tens. */
export function wholeInWords(value: number, british: boolean): string {
  if (value === 0) return 'zero';
  const parts: string[] = [];
  const [millions, thousands, rest] = [
    Math.floor(value / 1e6),
    Math.floor(value / 1000) % 1000,
    value % 1000,
  ];
  if (millions > 0) parts.push(`${belowThousand(millions, british)} million`);
  if (thousands > 0) parts.push(`${belowThousand(thousands, british)} thousand`);
  if (rest > 0)
    parts.push(
      british && rest < 100 && value > 1000 ? `and ${belowHundred(rest)}` : belowThousand(rest, british),
    );
  return parts.join(' ');
}

/** "four point oh eight": the digits after the point one by one. */
export function decimalInWords(whole: number, after: string, oh: boolean): string {
  const digits = [...after].map((digit) => (digit === '0' && oh ? 'oh' : SMALL[Number(digit)]));
  return `${wholeInWords(whole, true)} point ${digits.join(' ')}`;
}
