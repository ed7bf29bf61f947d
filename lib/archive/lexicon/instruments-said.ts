import type { KnownInstrumentType } from '@/shared/instruments';

interface InstrumentSaid {
  says: RegExp;
  types: readonly KnownInstrumentType[];
  /** The word tells more than the type does, and is looked for too. */
  isWordToo?: true;
}

const amplifiers = ['valve amplifier', 'solid-state amplifier'] as const;

/** How instrument types are said, the longer ways first; words that only look like one are kept out. */
export const instrumentsSaid: readonly InstrumentSaid[] = [
  {
    says: /\b(?:double|upright) bass(?:es)?\b|\bcontrabass(?:es)?\b/,
    types: ['violin family'],
    isWordToo: true,
  },
  { says: /\bviolins?\b|\bvoilins?\b|\bfiddles?\b/, types: ['violin family'] },
  { says: /\bviolas?\b|\bcellos?\b|\bvioloncellos?\b/, types: ['violin family'], isWordToo: true },
  { says: /\b(?:acoustic|electric) bass(?:es)?\b|\bbass guitars?\b/, types: ['bass guitar'] },
  {
    says: /(?<!\b(?:no|lost|more|less|the) )\bbass(?:es)?\b(?!'?s? (?:sides?|bars?|strings?|response|control|cut|tone|pot|knob|end|e|notes?|clef|bridge pins?|disappears?|frequenc\w+)\b)/,
    types: ['bass guitar'],
  },
  {
    says: /(?<=\bthe )\bbass(?:es)?\b(?= ?(?:guitar|that|with|$|i\b|had|hums?|buzz\w*|neck|pickups?|amp))/,
    types: ['bass guitar'],
  },
  { says: /\b(?:valve|tube) (?:amps?|amplifiers?|combos?)\b/, types: ['valve amplifier'] },
  {
    says: /\b(?:solid[ -]state|transistor) (?:amps?|amplifiers?|combos?)\b/,
    types: ['solid-state amplifier'],
  },
  { says: /(?<!\d ?)\b(?:amps?|amplifiers?|combos?)\b/, types: amplifiers },
  {
    says: /\b(?:nylon|gut)[ -]strings?(?: guitars?)?\b|\bclassicals?(?: guitars?)?\b|\b(?:spanish|flamenco) guitars?\b/,
    types: ['classical guitar'],
  },
  {
    says: /\bacoustics?(?: guitars?)?\b|\belectro[ -]acoustics?\b|\bdreadnoughts?\b|\bsteel[ -]string guitars?\b/,
    types: ['acoustic guitar'],
  },
  {
    says: /\belectric guitars?\b|\belectrics?\b(?! (?:shocks?|violins?|motors?|drill|faults?))/,
    types: ['electric guitar'],
  },
  { says: /\buk[ue]leles?\b|\bukes?\b/, types: ['ukulele'] },
  { says: /\bmandoline?s?\b|\bmandos?\b/, types: ['mandolin'] },
  { says: /\bbanjos?\b/, types: ['banjo'] },
  { says: /\b(?:effects? )?pedals?\b(?! steel)|\bstomp ?box(?:es)?\b/, types: ['effects pedal'] },
  { says: /\bloose pick-?ups?\b/, types: ['loose pickup'], isWordToo: true },
];

/** Names of instruments that are no type of their own, as the lexicon keeps them: who says one means no other. */
export const namedInstruments: ReadonlySet<string> = new Set(
  `accordion harmonica harmonium organ piano electricpiano synthesiser clarinet flute saxophone oboe recorder trumpet
  trombone frenchhorn tuba pipes ocarina harp dulcimer zither lute hurdygurdy resonator lapsteel pedalsteel snaredrum
  drum cymbal mallet edrum turntable rotaryspeaker mixer voicemic tapemachine headphone wireless tonewheel`.split(
    /\s+/,
  ),
);
