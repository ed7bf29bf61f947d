import type { HarnessInput } from '@/shared/jack';

type Pickup = HarnessInput['pickups'][number];

export const doubleCoil = (id: string, slug: number, screw: number): Pickup => ({
  id,
  subject: id,
  coils: [
    { name: 'slug', ohms: slug },
    { name: 'screw', ohms: screw },
  ],
});

export const singleCoil = (id: string, ohms: number): Pickup => ({
  id,
  subject: id,
  coils: [{ name: 'coil', ohms }],
});

export const volume = (serves: string, ohms = 500_000, wiring: 'divider' | 'independent' = 'divider') => ({
  id: serves === 'all' ? 'volume' : `${serves} volume`,
  name: serves === 'all' ? 'the volume' : `${serves} volume`,
  ohms,
  wiring,
  serves,
});

export const tone = (serves: string, ohms = 500_000) => ({
  id: serves === 'all' ? 'tone' : `${serves} tone`,
  name: serves === 'all' ? 'the tone' : `${serves} tone`,
  ohms,
  serves,
});

export const threeWay = [
  { name: 'neck', on: ['neck'] },
  { name: 'both', on: ['neck', 'bridge'] },
  { name: 'bridge', on: ['bridge'] },
];

export const split = (pickup: string, keeps = 'slug') => ({
  kind: 'split' as const,
  id: `${pickup} split`,
  name: `${pickup} split`,
  splits: [{ pickup, keeps }],
});

/** Two double coils, a volume and a tone each, a three-way selector, a split each. */
export const fourPots: HarnessInput = {
  pickups: [doubleCoil('neck', 4080, 3971), doubleCoil('bridge', 4420, 4370)],
  volumes: [volume('neck'), volume('bridge')],
  tones: [tone('neck'), tone('bridge')],
  positions: threeWay,
  switches: [split('neck'), split('bridge')],
};

/** Three single coils before one shared volume. */
export const threeSingles: HarnessInput = {
  pickups: [singleCoil('neck', 5900), singleCoil('middle', 6100), singleCoil('bridge', 6700)],
  volumes: [volume('all', 250_000)],
  tones: [tone('all', 250_000)],
  positions: [
    { name: '1', on: ['bridge'] },
    { name: '2', on: ['bridge', 'middle'] },
    { name: '3', on: ['middle'] },
    { name: '4', on: ['middle', 'neck'] },
    { name: '5', on: ['neck'] },
  ],
};

/** Two pickups, a volume each wired so that they do not turn each other down, no selector. */
export const twoIndependent: HarnessInput = {
  pickups: [singleCoil('neck', 7200), singleCoil('bridge', 8100)],
  volumes: [volume('neck', 250_000, 'independent'), volume('bridge', 250_000, 'independent')],
  positions: [{ name: 'on', on: ['neck', 'bridge'] }],
};

/** One double coil and a shared volume with a resistor from its loud lug to its wiper. */
export const onePickup: HarnessInput = {
  pickups: [doubleCoil('bridge', 4420, 4370)],
  volumes: [volume('all')],
  tones: [tone('all')],
  positions: [{ name: 'on', on: ['bridge'] }],
  switches: [split('bridge', 'screw')],
  resistors: [
    { id: 'bleed', name: 'treble bleed', ohms: 150_000, between: ['volume.input', 'volume.wiper'] },
  ],
};

export const harnesses = { fourPots, threeSingles, twoIndependent, onePickup };
