/** Words that say which kind of reading a length, a voltage or a bare number is. */
export interface TopicEntry {
  readonly say: string;
  readonly kind: string;
}

export const READING_TOPICS: readonly TopicEntry[] = [
  { say: '(action|clearance)', kind: 'string-height' },
  { say: 'string height', kind: 'string-height' },
  { say: 'height (of|on|at) the (e|a|d|g|b|c|string|strings|bass|treble)', kind: 'string-height' },
  { say: '(twelfth|seventeenth) [fret]', kind: 'string-height' },
  { say: '(12|17) th [fret]', kind: 'string-height' },
  { say: '(over|above|at) the (first|1) [st] fret', kind: 'string-height' },
  { say: 'end of the (fingerboard|fretboard|board)', kind: 'string-height' },
  { say: 'above the (fret|frets|board|fingerboard)', kind: 'string-height' },
  { say: 'strings (sit|sitting|are) ..2 (high|off)', kind: 'string-height' },
  { say: '(relief|backbow)', kind: 'relief' },
  { say: '(truss|trust) rod', kind: 'relief' },
  { say: '(forward|back|up) bow', kind: 'relief' },
  { say: '(bow|dip|hollow) in the neck', kind: 'relief' },
  { say: 'feeler (gauge|gauges|gage)', kind: 'relief' },
  { say: 'nut (slot|slots)', kind: 'nut-slot-depth' },
  { say: '(slot|slots) ..3 (nut|depth)', kind: 'nut-slot-depth' },
  { say: 'fret (height|heights)', kind: 'fret-height' },
  { say: '(crown|crowns) height', kind: 'fret-height' },
  { say: 'frets (are|measure|is) ..2 (tall|high)', kind: 'fret-height' },
  { say: 'height of the (fret|frets|crown|crowns)', kind: 'fret-height' },
  { say: 'pickup (height|heights)', kind: 'pickup-height' },
  { say: '(pole|poles|polepiece|polepieces) ..2 to ..2 (string|strings)', kind: 'pickup-height' },
  {
    say: 'to [the] [top] [of] [the] (pole|poles|polepiece|polepieces|pickup|pickups)',
    kind: 'pickup-height',
  },
  { say: '(fret|frets) (crown|crowns)', kind: 'fret-height' },
  { say: 'pole (piece|pieces) to ..2 (string|strings)', kind: 'pickup-height' },
  { say: 'height of the ..1 (pickup|pickups)', kind: 'pickup-height' },
  { say: '(intonation|intonates|intonated|intonate|intonating)', kind: 'intonation' },
  { say: '(scale|string) length', kind: 'length' },
  { say: '(nut|bridge|body|neck) (width|thickness)', kind: 'length' },
  {
    say: '(wide|long|width|thick|thickness|diameter|gap|spacing|afterlength|apart|crack|split|depth|step|travel|radius|length)',
    kind: 'length',
  },
  {
    say: '(thinnest|thinner|thickest|hole|shaft|saddle|bridge|slot|slots|post|soundpost|tailgut|stop)',
    kind: 'length',
  },
  { say: '(resistance|dcr|impedance|ohms|ohmmeter)', kind: 'resistance' },
  { say: '(inductance)', kind: 'inductance' },
  { say: '(capacitance)', kind: 'capacitance' },
  { say: '(plate|plates|anode|anodes) [voltage|volts]', kind: 'plate-voltage' },
  { say: '(b|b+) (plus|+)', kind: 'plate-voltage' },
  { say: '(bias|idle|cathode) current', kind: 'bias-current' },
  { say: '(bias|biased|biasing|idling)', kind: 'bias-current' },
  { say: '(quiescent|draw|drawing|draws|pulls|consumption|pulling) [current]', kind: 'current' },
  { say: 'bias (voltage|volts)', kind: 'voltage' },
  {
    say: '(heater|heaters|filament|filaments|mains|rail|rails|offset|battery|supply|grid|screen|collector|drain)',
    kind: 'voltage',
  },
  { say: '(humidity|hygrometer|rh)', kind: 'humidity' },
  { say: '(temperature|temp|thermometer)', kind: 'temperature' },
  { say: '(tuned|tune|tuning|tuner|pitch|pitched)', kind: 'pitch' },
  { say: '(weigh|weighs|weight|weighed|weighing|scales)', kind: 'mass' },
  { say: 'tension', kind: 'string-tension' },
];

/** Which kinds a quantity can be; the first one is taken when nothing near by says. */
export const KINDS_OF_QUANTITY: Readonly<Record<string, readonly string[]>> = {
  resistance: ['resistance'],
  voltage: ['voltage', 'plate-voltage', 'polarity-kick'],
  current: ['current', 'bias-current'],
  capacitance: ['capacitance'],
  inductance: ['inductance'],
  length: ['length', 'string-height', 'relief', 'nut-slot-depth', 'fret-height', 'pickup-height'],
  cents: ['intonation'],
  frequency: ['pitch'],
  temperature: ['temperature'],
  humidity: ['humidity'],
  mass: ['mass', 'string-tension'],
  force: ['string-tension', 'mass'],
};

/** Millimetres that a kind of length can be, widely drawn. Common practice, no source. */
export const PLAUSIBLE_MM: Readonly<Record<string, readonly [number, number]>> = {
  'string-height': [0.05, 15],
  relief: [0, 2.5],
  'nut-slot-depth': [0, 6],
  'fret-height': [0.1, 2.5],
  'pickup-height': [0.2, 15],
  length: [0.01, 3000],
};

export const MM_PER: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  thou: 0.0254,
  in: 25.4,
  '64ths': 25.4 / 64,
  '32nds': 25.4 / 32,
};
