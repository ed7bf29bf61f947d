import { type CautionKey, cautionKeys } from './cautions';

/** Volts above which a touch is taken to be dangerous: extra-low voltage ends at 50 V AC (IEC 61140, from memory). */
export const touchableVolts = 50;

/** What is known of a job that a caution may hang on. */
export interface JobFacts {
  instrumentType: string;
  readings: readonly { kind: string; baseValue: number | null }[];
  /** Words of what was asked, found and done. */
  words: readonly string[];
}

type Lexicon = readonly (readonly [CautionKey, RegExp])[];

const byInstrument: Lexicon = [
  ['valve amplifier', /\b(valve|tube)\b.*\b(amp|amplifier|preamp|organ|radio)/i],
  ['mains', /\b(amp|amplifier|organ|radio|rack|mixer)\b/i],
];

/** Words of the work. Wide on purpose: a caution too many costs a line, one too few may cost an eye. */
const byWords: Lexicon = [
  ['valve amplifier', /\b(valves?|vacuum tubes?|plate voltage|anode|b\+ ?supply|(re-?)?bias(ed|ing)?)\b/i],
  [
    'mains',
    /\b(mains|power (supply|cord|lead|transformer|switch)|line voltage|wall (socket|outlet)|plugged in|fuse holder|fuses?)\b/i,
  ],
  ['high voltage', /\b(high voltage|phantom rail|filter cap(acitor)?s?|discharg(e|ed|ing))\b/i],
  [
    'soldering',
    /\b((de-?|un-?|re-?)?solder(ed|ing|s)?|re-?wir(e|ed|ing)|wiring|harness|pot swap|pickup (swap|change)|(new|replace[ds]?|swap(ped)?|fit(ted)?)\b.*\b(pots?|jack|pickups?|switch|capacitors?|caps?))\b/i,
  ],
  [
    'string tension',
    /\b(re-?string(s|ing)?|re-?strung|strings? (change|off|on|up|back)|(new|change|set of|cut(ting)?|slacken(ed)?|tune) strings?|tun(e|ed|ing) up|(to|up to) pitch|string tension|set-?up|truss rod)\b/i,
  ],
  [
    'dust',
    /\b(re-?fret(s|ted|ting)?|fret (level|dress|crown|file|polish|end|sprout)\w*|frets? (levelled|leveled|dressed|crowned)|sand(ed|ing)|fil(e|ed|ing)|crown(ed|ing)?|level(led|ed|ling|ing)|new nut|nut slots?|saddle|bone|shell|pearl|rout(ed|er|ing)|saw(n|ed|ing)?|drill(ed|ing)?|carv(e|ed|ing)|ebony|rosewood)\b/i,
  ],
  [
    'solvents',
    /\b(solvents?|lacquer(ed|ing)?|re-?finish(ed|ing)?|varnish(ed|ing)?|shellac|naphtha|thinners?|white spirit|acetone|french polish(ed|ing)?|super ?glue|cyanoacrylate|epoxy|contact cleaner|paint(ed|ing)?|stain(ed|ing)?|spray(ed|ing)?)\b/i,
  ],
  ['lithium cells', /\b(lithium|li-?ion|li-?po|rechargeable|battery pack)\b/i],
];

/** The cautions that a job calls for, in the order of the table. */
export function cautionsFor({ instrumentType, readings, words }: JobFacts): CautionKey[] {
  const text = words.join('\n');
  const found = new Set<CautionKey>([
    ...said(byInstrument, instrumentType),
    ...readings.flatMap(byReading),
    ...said(byWords, text),
  ]);
  return cautionKeys.filter((key) => found.has(key));
}

function said(lexicon: Lexicon, text: string): CautionKey[] {
  return lexicon.filter(([, pattern]) => pattern.test(text)).map(([key]) => key);
}

/** An open voltage reading was over the range of the meter, so it may have been anything. */
function byReading({ kind, baseValue }: JobFacts['readings'][number]): CautionKey[] {
  if (kind === 'plate-voltage' || kind === 'bias-current')
    return ['valve amplifier', 'mains', 'high voltage'];
  if (kind === 'voltage')
    return baseValue === null || Math.abs(baseValue) > touchableVolts ? ['high voltage'] : [];
  if (kind === 'resistance') return ['ohms without power'];
  return kind === 'string-tension' ? ['string tension'] : [];
}
