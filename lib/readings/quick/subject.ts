/** Words that stand for a pickup when nothing else is said. */
const pickupWords = /\b(neck|bridge|middle|front|back|rear|centre|center)\b/i;
const fillers = /\b(the|a|is|at|reads?|reading|was|of|on|total|both coils|whole|fret|string|height)\b/gi;
const kickWords = /\b(slug|screw|steel|touch(ed)?|kick(ed)?|lay|laid|lift(ed)?|taken|off|on|small|large|big|row)\b/gi;
const stringName = /\b(low|high)?\s*(?<![#\w])([a-g](?:[#b])?)(?!\w)\s*(?:string)?/i;

/** Details of a set-up measurement: which string, which fret, which side. */
export function setUpDetails(line: string): { details: { string?: string; fret?: number; side?: 'bass' | 'treble' }; rest: string } {
  let rest = line;
  const side = /\b(bass|treble)\s+side\b/i.exec(rest);
  if (side) rest = rest.replace(side[0], ' ');
  const fret = /\b(?:fret\s+(\d{1,2})|(\d{1,2})(?:st|nd|rd|th)?\s+fret|(\d{1,2})(?:st|nd|rd|th))\b/i.exec(rest);
  if (fret) rest = rest.replace(fret[0], ' ');
  const named = stringName.exec(rest);
  if (named) rest = rest.replace(named[0], ' ');
  return {
    details: {
      ...(named ? { string: `${named[1] ? `${named[1].toLowerCase()} ` : ''}${(named[2] ?? '').toUpperCase()}` } : {}),
      ...(fret ? { fret: Number(fret[1] ?? fret[2] ?? fret[3]) } : {}),
      ...(side ? { side: side[1]?.toLowerCase() === 'bass' ? ('bass' as const) : ('treble' as const) } : {}),
    },
    rest,
  };
}

/** Row, steel and size of a kick. */
export function kickDetails(line: string): { row?: string; steel: 'laid on' | 'taken off'; size?: 'large' | 'small'; sign: 1 | -1 | null } {
  const row = /\b(slug|screw|upper|lower)\b/i.exec(line)?.[1]?.toLowerCase();
  const small = /\bsmall\b/i.test(line);
  const large = /\b(large|big)\b/i.test(line);
  const sign = /(?<![\w])(\+|plus|positive|up)(?![\w])/i.test(line) ? 1 : /(?<![\w])([-−]|minus|negative|down)(?![\w])/i.test(line) ? -1 : null;
  return {
    ...(row ? { row } : {}),
    steel: /\b(lift|lifted|off)\b/i.test(line) ? 'taken off' : 'laid on',
    ...(small ? { size: 'small' as const } : large ? { size: 'large' as const } : {}),
    sign,
  };
}

/** What is left of a line, as the subject: "neck" is the neck pickup where pickups are measured. */
export function subjectOf(rest: string, isKick: boolean, electric: boolean): string {
  const plain = (isKick ? rest.replace(kickWords, ' ').replace(/[+−-]/g, ' ') : rest)
    .replace(fillers, ' ')
    .replace(/[\s,;:=()]+/g, ' ')
    .trim();
  if (electric && pickupWords.test(plain) && !/\bpickup\b/i.test(plain)) return plain.replace(pickupWords, '$& pickup').toLowerCase();
  return plain;
}

