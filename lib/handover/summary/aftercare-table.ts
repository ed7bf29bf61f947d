/** What to look after once a kind of work was done. */
export interface Aftercare {
  /** In the words of the work that was done. */
  when: RegExp;
  /** Only on instruments whose type reads like this; left out: on all. */
  instruments?: RegExp;
  says: string;
}

/** All of it common practice, no source. In the order in which it is printed; each is said once. */
export const aftercareTable: readonly Aftercare[] = [
  {
    when: /\b(valves?|tubes?|re-?bias(ed|ing)?|bias|mains|capacitors? in the supply)\b/i,
    instruments: /amp/i,
    says: 'Let the amplifier stand with air around it, and never run it without its loudspeaker. If it hums more, smells or blows a fuse, switch it off and have qualified people look at it; do not open it.',
  },
  {
    when: /\b(solder\w*|re-?wir\w+|wiring|pickups?|jack|pots?|switch|harness|crackl\w+)\b/i,
    says: 'Play it through all switch positions in the first weeks. If a crackle, a hum or a drop-out comes back, tell us when and in which position.',
  },
  {
    when: /\b(jack|socket|output)\b/i,
    says: 'Pull the cable by its plug, and let no weight hang on it.',
  },
  {
    when: /\b(set-?up|truss rod|relief|action|intonation|string height)\b/i,
    says: 'Stay with the same gauge of strings and the same tuning: others pull the neck to another place, and the set-up with it.',
  },
  {
    when: /\b(set-?up|truss rod|relief|neck|top|crack|brace|glu(e|ed|ing)|fingerboard)\b/i,
    says: 'Wood moves with the air. Keep it between about 40 and 60 % humidity, away from heaters, cars and sunny windows.',
  },
  {
    when: /\b(strings?|re-?string\w*)\b/i,
    says: 'New strings stretch for some days: tune often, and wipe them after playing.',
  },
  {
    when: /\b(frets?|re-?fret\w*|fret level\w*|crown\w*)\b/i,
    says: 'Frets wear under the strings. When notes begin to buzz in one place, have it looked at before it gets deep.',
  },
  {
    when: /\b(nut|saddle|bridge)\b/i,
    says: 'If a string sticks or pings while you tune, tell us: its slot may want a touch more.',
  },
  {
    when: /\b(lacquer\w*|finish\w*|varnish\w*|polish\w*|paint\w*|oil(ed|ing)?|french polish)\b/i,
    says: 'A new finish hardens for weeks: hang it free, and let no rubber, strap or foam lie on it meanwhile.',
  },
  {
    when: /\b(glu(e|ed|ing)|crack|brace|headstock|joint of the neck)\b/i,
    says: 'Look at the mended place now and then. If a line opens or a string goes flat by itself, slacken the strings and bring it in.',
  },
  {
    when: /\b(batter(y|ies)|active|preamp|lithium|rechargeable)\b/i,
    says: 'Pull the plug out when you do not play: on many instruments it is the switch of the battery. Never use a battery that is swollen.',
  },
  {
    when: /\b(tuners?|machine heads?|pegs?)\b/i,
    says: 'Tune up to the note, not down to it; then the gears hold it.',
  },
];

/** Where nothing in the table fits. */
export const generalAftercare =
  'If anything is not as it should be, bring it back soon and tell us when it happens.';
