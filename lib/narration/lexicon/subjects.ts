/** Things that a reading can be about. `pickup` subjects carry on until another is named. */
export interface SubjectEntry {
  readonly say: string;
  readonly name: string;
  readonly sort: 'pickup' | 'part' | 'row' | 'side' | 'whole';
}

const COUNTED = ['one', 'two', 'three', 'four', 'five'];

export const SUBJECTS: readonly SubjectEntry[] = [
  ...COUNTED.map(
    (word, at): SubjectEntry => ({
      say: `position (${word}|${at + 1})`,
      name: `position ${at + 1}`,
      sort: 'part',
    }),
  ),
  { say: 'coil (one|1)', name: 'coil 1', sort: 'row' },
  { say: 'coil (two|2)', name: 'coil 2', sort: 'row' },
  { say: '(first) coil', name: 'coil 1', sort: 'row' },
  { say: '(second) coil', name: 'coil 2', sort: 'row' },
  { say: '(collector|collectors)', name: 'collector', sort: 'part' },
  { say: '(emitter|emitters)', name: 'emitter', sort: 'part' },
  { say: 'drain', name: 'drain', sort: 'part' },
  { say: '(gate|gates)', name: 'gate', sort: 'part' },
  { say: 'wiper', name: 'wiper', sort: 'part' },
  { say: '(board|supply)', name: 'supply', sort: 'part' },
  ...['neck', 'bridge', 'middle', 'front', 'rear'].map(
    (name): SubjectEntry => ({
      say: `${name} (pickup|humbucker|position|pup|coil|single|unit|pu|p)`,
      name,
      sort: 'pickup',
    }),
  ),
  ...['neck', 'bridge', 'middle'].map((name): SubjectEntry => ({ say: name, name, sort: 'pickup' })),
  { say: '(slug|slugs|stud) [coil|side|row]', name: 'slug coil', sort: 'row' },
  { say: '(screw|screws) [coil|side|row]', name: 'screw coil', sort: 'row' },
  { say: '(north|upper|top) coil', name: 'upper coil', sort: 'row' },
  { say: '(south|lower|bottom) coil', name: 'lower coil', sort: 'row' },
  { say: 'bass side', name: 'bass side', sort: 'side' },
  { say: 'treble side', name: 'treble side', sort: 'side' },
  { say: '(volume|vol) [pot|control|one]', name: 'volume pot', sort: 'part' },
  { say: 'master volume', name: 'master volume pot', sort: 'part' },
  { say: 'tone [pot|control|one]', name: 'tone pot', sort: 'part' },
  { say: '(blend|balance) [pot|control]', name: 'blend pot', sort: 'part' },
  { say: '(gain|drive|fuzz|level|treble|presence) (pot|control)', name: 'gain pot', sort: 'part' },
  { say: '(whole|total|altogether|overall|series|combined)', name: 'total', sort: 'whole' },
  { say: 'whole (thing|lot|pickup)', name: 'total', sort: 'whole' },
  { say: '(battery)', name: 'battery', sort: 'part' },
  { say: '(mains|wall) [voltage]', name: 'mains', sort: 'part' },
  { say: '(heater|heaters|filament|filaments)', name: 'heaters', sort: 'part' },
  { say: '(rail|rails)', name: 'rails', sort: 'part' },
  { say: '(plate|plates|anode|anodes)', name: 'plate', sort: 'part' },
  { say: '(screen|screens) [grid]', name: 'screen', sort: 'part' },
  { say: 'cathode', name: 'cathode', sort: 'part' },
  { say: '(speaker|output) [terminals|terminal]', name: 'speaker terminals', sort: 'part' },
  { say: 'reverb tank', name: 'reverb tank', sort: 'part' },
  { say: '(first|1st) [output] (valve|tube)', name: 'first valve', sort: 'part' },
  { say: '(second|2nd) [output] (valve|tube)', name: 'second valve', sort: 'part' },
  { say: 'piezo [pickup]', name: 'piezo', sort: 'pickup' },
  { say: '(saddle|undersaddle)', name: 'saddle', sort: 'part' },
  { say: '(output|jack) [jack|socket]', name: 'output jack', sort: 'part' },
];

/** Letters that open strings of common instruments are called by. */
export const STRING_LETTERS: ReadonlySet<string> = new Set(['e', 'a', 'd', 'g', 'b', 'c', 'f']);

export const ORDINALS: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
};
