/** What a unit measures, as far as the word alone tells. */
export type Quantity =
  | 'resistance'
  | 'voltage'
  | 'current'
  | 'capacitance'
  | 'inductance'
  | 'length'
  | 'cents'
  | 'frequency'
  | 'temperature'
  | 'humidity'
  | 'mass'
  | 'force'
  | 'none';

export interface UnitEntry {
  /** A phrase; see words/phrases.ts for how phrases are written. */
  readonly say: string;
  readonly unit: string;
  readonly quantity: Quantity;
  /** A second meaning, taken when the first is out of all reason for what is measured. */
  readonly or?: string;
  /** Said in the singular, as in "a nine volt battery". */
  readonly singular?: true;
}

/** Units by how they are said, misheard spellings among them. `none`: counted things that are no reading. */
export const UNITS: readonly UnitEntry[] = [
  {
    say: '(k|kay|kays|ks|kilo|kilos|kill|key) (ohms|ohm|omes|homes|oms|arms|owns)',
    unit: 'kΩ',
    quantity: 'resistance',
  },
  { say: '(kilohms|kilohm|kiloohms|kohms|kohm|kω|kω)', unit: 'kΩ', quantity: 'resistance' },
  { say: 'k ω', unit: 'kΩ', quantity: 'resistance' },
  { say: '(k|kay|kays)', unit: 'kΩ', quantity: 'resistance' },
  { say: '(meg|megs|mega|m) (ohms|ohm|omes|ω)', unit: 'MΩ', quantity: 'resistance' },
  { say: '(megohms|megohm|megaohms|megaohm|meg|megs)', unit: 'MΩ', quantity: 'resistance' },
  { say: '(ohms|omes|oms|ω)', unit: 'Ω', quantity: 'resistance' },
  { say: 'ohm', unit: 'Ω', quantity: 'resistance', singular: true },
  { say: "(ohm|ohms) 's", unit: 'Ω', quantity: 'resistance' },
  { say: "(k|kay) (ohm|ohms) 's", unit: 'kΩ', quantity: 'resistance' },

  { say: '(millivolts|mv)', unit: 'mV', quantity: 'voltage' },
  { say: 'millivolt', unit: 'mV', quantity: 'voltage', singular: true },
  { say: '(milli|mil|mill|m) (volts|volt)', unit: 'mV', quantity: 'voltage' },
  { say: '(volts|vdc|vac|v)', unit: 'V', quantity: 'voltage' },
  { say: 'volt', unit: 'V', quantity: 'voltage', singular: true },

  { say: '(milliamps|milliamperes|ma)', unit: 'mA', quantity: 'current' },
  { say: 'milliamp', unit: 'mA', quantity: 'current', singular: true },
  { say: '(milli|mil|mill) (amps|amp)', unit: 'mA', quantity: 'current' },
  { say: '(microamps|microamp|ua)', unit: 'µA', quantity: 'current' },
  { say: '(micro|mike) (amps|amp)', unit: 'µA', quantity: 'current' },
  { say: '(amps|amperes)', unit: 'A', quantity: 'current' },
  { say: 'amp', unit: 'A', quantity: 'current', singular: true },

  { say: '(microfarads|microfarad|mfd|uf|µf)', unit: 'µF', quantity: 'capacitance' },
  { say: '(micro|mike) (farads|farad)', unit: 'µF', quantity: 'capacitance' },
  { say: '(mike|mikes|mic|mics|micro)', unit: 'µF', quantity: 'capacitance' },
  { say: '(nanofarads|nanofarad|nf|nano|nanos)', unit: 'nF', quantity: 'capacitance' },
  { say: 'nano (farads|farad)', unit: 'nF', quantity: 'capacitance' },
  { say: '(picofarads|picofarad|pf|puff|puffs|pico|picos)', unit: 'pF', quantity: 'capacitance' },
  { say: 'pico (farads|farad)', unit: 'pF', quantity: 'capacitance' },

  { say: '(henries|henrys|henry|h)', unit: 'H', quantity: 'inductance' },
  { say: '(millihenries|millihenrys|millihenry|mh)', unit: 'mH', quantity: 'inductance' },
  { say: 'milli (henries|henrys|henry)', unit: 'mH', quantity: 'inductance' },

  { say: '(millimetres|millimeters|mm|mms)', unit: 'mm', quantity: 'length' },
  { say: '(millimetre|millimeter)', unit: 'mm', quantity: 'length', singular: true },
  { say: '(milli|mille) (metres|meters|metre|meter)', unit: 'mm', quantity: 'length' },
  { say: '(mil|mill|mils|mills|mills)', unit: 'mm', quantity: 'length', or: 'thou' },
  { say: '(centimetres|centimeters|centimetre|centimeter|cm|cms)', unit: 'cm', quantity: 'length' },
  { say: '(thou|thousandths|thousandth|thousands|thous)', unit: 'thou', quantity: 'length' },
  { say: '(thou|thousandths|thousandth|thousands) of an inch', unit: 'thou', quantity: 'length' },
  { say: 'sixty (fourths|fourth|forths|forth|fours)', unit: '64ths', quantity: 'length' },
  { say: 'sixty (fourths|fourth|forths|forth|fours) of an inch', unit: '64ths', quantity: 'length' },
  { say: '(64ths|64th)', unit: '64ths', quantity: 'length' },
  { say: '64 (ths|th|s)', unit: '64ths', quantity: 'length' },
  { say: '64 (ths|th|s) of an inch', unit: '64ths', quantity: 'length' },
  { say: '32 (nds|nd|s)', unit: '32nds', quantity: 'length' },
  { say: 'thirty (seconds|second) of an inch', unit: '32nds', quantity: 'length' },
  { say: '(inches|")', unit: 'in', quantity: 'length' },
  { say: 'inch', unit: 'in', quantity: 'length', singular: true },
  { say: 'of an inch', unit: 'in', quantity: 'length' },

  { say: '(cents|cent)', unit: 'cents', quantity: 'cents' },
  { say: '(hertz|hz|hurts|herts)', unit: 'Hz', quantity: 'frequency' },
  { say: '(k|kilo) (hertz|hz)', unit: 'kHz', quantity: 'none' },
  { say: '(kilohertz|khz)', unit: 'kHz', quantity: 'none' },
  { say: '(degrees|degree|°) (c|celsius|centigrade)', unit: '°C', quantity: 'temperature' },
  { say: '(degrees|degree|°) (f|fahrenheit)', unit: '°F', quantity: 'temperature' },
  { say: '(celsius|centigrade)', unit: '°C', quantity: 'temperature' },
  { say: 'fahrenheit', unit: '°F', quantity: 'temperature' },
  { say: '(degrees|degree|°)', unit: '°C', quantity: 'temperature' },
  { say: '(percent|%)', unit: '%RH', quantity: 'humidity' },
  { say: 'per cent', unit: '%RH', quantity: 'humidity' },
  { say: '(percent|%) (relative|rh) [humidity]', unit: '%RH', quantity: 'humidity' },
  { say: '(grams|gram|grammes|gramme|g)', unit: 'g', quantity: 'mass' },
  { say: '(ounces|ounce|oz)', unit: 'oz', quantity: 'mass' },
  { say: '(kilograms|kilogram|kilogrammes|kg|kilos|kilo)', unit: 'kg', quantity: 'mass' },
  { say: '(newtons|newton)', unit: 'N', quantity: 'force' },
  { say: '(pounds|pound|lbs|lb)', unit: 'lbf', quantity: 'force' },

  {
    say: '(seconds|second|minutes|minute|mins|hours|hour|days|day|weeks|week|months|month|years|year|oclock|am|pm)',
    unit: '',
    quantity: 'none',
  },
  { say: '(quid|dollars|dollar|bucks|euros|euro|pence|p|grand|fiver|tenner)', unit: '', quantity: 'none' },
  {
    say: '(watts|watt|turns|turn|winds|times|db|decibels|semitones|semitone|octaves|bar|bars|grit|gauge|bpm)',
    unit: '',
    quantity: 'none',
  },
  { say: '(metres|meters|feet|foot|miles|mile|litres|ml)', unit: '', quantity: 'none' },
];

const UNIT_WORDS: ReadonlySet<string> = new Set(
  UNITS.flatMap(({ say }) => (/^[([]?([^)\]\s]+)/.exec(say)?.[1] ?? '').split('|')),
);

/** Whether a unit can begin with this word. */
export const isUnitWord = (word: string): boolean => UNIT_WORDS.has(word) && word !== 'of';
