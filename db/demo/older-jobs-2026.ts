import type { OlderJob } from './demo-types';
import { asked, declined, fitted, forFree, found, read, removed, whole } from './older-jobs-words';

export const olderJobs2026: readonly OlderJob[] = [
  {
    title: 'Lap steel: hums louder than it plays',
    receivedOn: '2026-01-19',
    promisedOn: '2026-01-26',
    collectedOn: '2026-01-24',
    state: 'collected',
    cameWith: ['wooden case', 'steel bar'],
    client: 'Florian Puddlemere',
    instrument: { type: 'lap steel', features: 'one piece of maple, six strings; one single-coil pickup' },
    work: [
      asked('Make it quieter', 2500),
      found('Hot and ground changed over at the jack: joined the right way round'),
      found('Cold joint on the volume pot: soldered anew', 800),
      declined('Pickup that cancels hum', 'Wants to keep the sound'),
    ],
    readings: [
      whole('pickup', '9.31'),
      read('resistance', '0.1', 'Ω', { subject: 'jack, ground joint', note: 'after' }),
      read('nut-slot-depth', '1.1', 'mm', { details: { string: '1st' } }),
    ],
  },
  {
    title: 'Electric guitar: hum is back, worse near the lamp',
    receivedOn: '2026-02-16',
    promisedOn: '2026-02-20',
    collectedOn: '2026-02-20',
    state: 'collected',
    cameWith: ['hard case'],
    client: 'Odo Thimblewick',
    instrument: { ofJob: 'Electric guitar: hum that stops when the strings are touched' },
    claims: [
      {
        kind: 'other',
        subject: 'cause of the hum that came back',
        value: 'open cavities: the string ground of last time still holds',
        basis: 'measured',
        evidence: '0.3 Ω from the bridge to the sleeve',
        sure: 'certain',
      },
    ],
    work: [
      asked('Cure the hum', 2500),
      found('No shielding in the cavities: copper foil, joined to ground', 5500),
      forFree('Told the player: a dimmer hums into any single coil'),
    ],
    parts: [fitted('copper foil, self-adhesive'), removed('cracked cavity cover', 'kept')],
    readings: [
      {
        ...whole('neck pickup', '6.98', 'cold from the car'),
        details: { celsius: 12 },
      },
      {
        ...whole('bridge pickup', '7.40', 'cold from the car'),
        details: { celsius: 12 },
      },
      { ...whole('neck pickup', '7.23', 'at room temperature'), details: { celsius: 21 } },
      { ...whole('bridge pickup', '7.66', 'at room temperature'), details: { celsius: 21 } },
      read('resistance', '0.3', 'Ω', { subject: 'string ground', between: ['bridge', 'sleeve'] }),
    ],
  },
];
