/** What a job can involve that may hurt someone. */
export const cautionKeys = [
  'valve amplifier',
  'mains',
  'high voltage',
  'soldering',
  'ohms without power',
  'string tension',
  'dust',
  'solvents',
  'lithium cells',
] as const;
export type CautionKey = (typeof cautionKeys)[number];

/** Short texts for the page and the client summary. Common practice; local codes and licensed practice come first. */
export const cautions: Readonly<Record<CautionKey, string>> = {
  'valve amplifier':
    'Valve amplifiers hold lethal voltage, also switched off and unplugged. Qualified people only: discharge, check, one hand, nobody alone. Local codes and licensed practice come first.',
  mains: 'Work on anything connected to the mains belongs to qualified people under local codes.',
  'high voltage': 'Above 50 V a touch can injure or kill. Rated leads and meter category, one hand, and only those qualified under local codes.',
  soldering: 'Solder fumes, lead and a hot iron: air moving, eyes covered, hands washed, iron in its stand.',
  'ohms without power': 'Ohms only on a circuit without power: unplugged, batteries out, capacitors discharged.',
  'string tension': 'A string under tension can break or whip: eyes covered, slacken before cutting.',
  dust: 'Dust of fret metal, bone, shell and wood: mask and extraction; some of it is poisonous or makes people allergic.',
  solvents: 'Solvents and finishes burn and poison: air moving, gloves, no flame, and the maker’s sheet at hand.',
  'lithium cells': 'A bent, pierced or shorted lithium cell can burn: cover its contacts, never solder to it, stop when it swells.',
};

/** Volts from which a touch is taken to be dangerous: the usual limit for extra-low voltage is 50 V AC (IEC 61140). */
export const touchableVolts = 50;

/** What is known of a job that a caution may hang on. */
export interface JobFacts {
  instrumentType: string;
  readings: readonly { kind: string; baseValue: number | null }[];
  /** Words of what was asked, found and done. */
  words: readonly string[];
}

const byWords: readonly (readonly [CautionKey, RegExp])[] = [
  ['soldering', /\b(solder|rewire|rewiring|joint|re-?wir|pot swap|pickup swap|jack socket)\w*/i],
  ['string tension', /\b(re-?string|strings? (off|on|up)|tun(e|ing) up|tension)\w*/i],
  ['dust', /\b(fret|sand|file|filing|crown|level|nut|saddle|bone|shell|rout)\w*/i],
  ['solvents', /\b(solvent|lacquer|finish|varnish|naphtha|thinner|french polish|glue)\w*/i],
  ['lithium cells', /\b(lithium|li-?ion|rechargeable)\b/i],
  ['mains', /\b(mains|power supply|transformer|plugged in|power cord)\b/i],
];

/** The cautions that a job calls for, in the order of the table. */
export function cautionsFor(facts: JobFacts): CautionKey[] {
  const found = new Set<CautionKey>();
  if (/valve/i.test(facts.instrumentType)) found.add('valve amplifier').add('mains');
  if (/amplifier/i.test(facts.instrumentType)) found.add('mains');
  for (const { kind, baseValue } of facts.readings) {
    if ((kind === 'voltage' || kind === 'plate-voltage') && Math.abs(baseValue ?? 0) > touchableVolts) found.add('high voltage');
    if (kind === 'plate-voltage' || kind === 'bias-current') found.add('valve amplifier');
    if (kind === 'resistance') found.add('ohms without power');
    if (kind === 'string-tension') found.add('string tension');
  }
  const words = facts.words.join('\n');
  for (const [key, pattern] of byWords) if (pattern.test(words)) found.add(key);
  return cautionKeys.filter((key) => found.has(key));
}
