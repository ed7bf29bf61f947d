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

/**
 * Short texts for the page and the client summary. Common practice, no source; each puts local codes and licensed
 * practice first.
 */
export const cautions: Readonly<Record<CautionKey, string>> = {
  'valve amplifier':
    'Valve amplifiers hold lethal voltage, also switched off and unplugged. Qualified people only: discharge, check, one hand, nobody alone. Local codes and licensed practice come first.',
  mains:
    'Work on anything connected to the mains belongs to qualified people. Local codes and licensed practice come first.',
  'high voltage':
    'Above 50 V a touch can injure or kill. Rated leads and meter category, one hand, qualified people only. Local codes and licensed practice come first.',
  soldering:
    'Solder fumes, lead and a hot iron: air moving, eyes covered, hands washed, iron in its stand. Local rules for lead and fumes come first.',
  'ohms without power':
    'Ohms only on a circuit without power: unplugged, batteries out, capacitors discharged by someone qualified. Local codes come first.',
  'string tension':
    'A string under tension can break or whip: eyes covered, slacken before cutting. Local workplace rules come first.',
  dust: 'Dust of fret metal, bone, shell and wood: mask and extraction; some of it is poisonous or makes people allergic. Local workplace rules come first.',
  solvents:
    'Solvents and finishes burn and poison: air moving, gloves, no flame, and the safety data sheet at hand. Local rules for use and disposal come first.',
  'lithium cells':
    'A bent, pierced or shorted lithium cell can burn: cover its contacts, never solder to it, stop when it swells. Local rules for transport and disposal come first.',
};
