import { job } from './form';

/** Basses and loose pickups of the third blind set. */
export const thirdBassAndPickupJobs = [
  job({
    key: 'u-bass-dead-spot',
    on: '2025-01-22',
    type: 'bass guitar',
    client: 'Rufus Sampleton',
    title: 'Dead spot at the fifth fret, first string',
    work: ['asked done: Less of a dead spot', 'offered declined: Stiffer neck // money'],
    film: `
      0:10 intake: C on the G string gives up after a second
      0:50 = relief 0.45 mm first to seventeenth
      1:30 diagnosis: The neck swallows that one, frets are fine
      3:20 work: Clamp weight on the head, tried three places
      3:40 = mass 85 g clamp weight
      7:00 result: Moved down to a place nobody plays`,
  }),
  job({
    key: 'u-barrel-jack',
    on: '2026-01-13',
    type: 'bass guitar',
    client: 'Suki Noname',
    title: 'Cuts out when the lead is wiggled',
    work: ['asked done: Signal cuts out'],
    parts: ['fitted stock: Plate-mounted open-frame jack', 'removed returned: Barrel jack'],
    film: `
      0:10 intake: Wiggle it and the sound goes
      1:15 diagnosis: Barrel jack worn inside, cannot be bent back
      3:00 work: Open-frame jack on a plate instead
      6:30 = resistance 0.1 Ω tip to tip
      7:00 result: Wiggle all you like`,
  }),
  job({
    key: 'u-preamp-eighteen',
    on: '2025-08-05',
    type: 'bass guitar',
    client: 'Otto Unperson',
    title: 'Preamp on eighteen volts',
    work: ['asked done: Two batteries in series for headroom', 'found done: Battery clip chewed'],
    parts: ['fitted stock: Two battery clips'],
    film: `
      0:10 intake: Clips when he slaps
      1:00 = voltage 8.9 V single battery
      1:20 - sheet says nine to eighteen, so we may
      4:00 work: Second clip, red to black in the middle
      6:10 = voltage 18.6 V at the preamp
      6:30 = current 1.1 mA drawn
      9:00 result: Slaps clean`,
  }),
  job({
    key: 'u-rewind-open',
    on: '2025-02-18',
    type: 'loose pickup',
    client: 'Dilys Nonesuch',
    title: 'Open coil, rewound',
    work: ['asked done: Bring it back to life'],
    parts: ['fitted stock: Enamelled wire, 0.063 mm'],
    film: `
      0:10 intake: Arrived in an envelope
      0:40 = resistance open kΩ single coil
      1:30 diagnosis: Green rot right through the windings
      2:00 work: Cut the old wire off with a blade
      6:00 work: Wound eight thousand turns, scatter by hand
      31:00 = resistance 7.42 kΩ single coil
      31:40 = inductance 2.9 H single coil
      34:00 result: Alive`,
  }),
  job({
    key: 'u-lead-off-start',
    on: '2026-06-09',
    type: 'loose pickup',
    client: 'Gwil Imaginary',
    title: 'Dead single coil saved without a rewind',
    work: ['asked done: Rewind // turned out not needed'],
    film: `
      0:10 intake: Dead, he thinks it wants winding
      0:35 = resistance open kΩ single coil
      1:50 diagnosis: Hair wire snapped at the eyelet
      2:02 - look, loupe, there is the end waving at me
      4:30 work: Teased half a turn off and tinned it to the eyelet
      7:00 = resistance 5.96 kΩ single coil
      8:10 result: Ten minutes instead of an afternoon`,
  }),
  job({
    key: 'u-magnet-swap',
    on: '2026-03-18',
    type: 'loose pickup',
    client: 'Basil Whoever',
    title: 'Humbucker: ceramic bar out, alnico in',
    work: ['asked done: Softer magnet', 'found not done: Colours not metered // client in a hurry'],
    parts: ['fitted client: Alnico bar magnet', 'removed returned: Ceramic bar'],
    traces: [
      {
        subject: 'humbucker',
        conductors: 'orange grey violet pink bare',
        joint: {
          at: '9:30',
          title: 'Series, as it came',
          lines: [
            'hot: orange → lead tip (assumed)',
            'joined: grey + violet → taped (assumed)',
            'ground: pink + bare → lead sleeve (assumed)',
          ],
        },
      },
    ],
    film: `
      0:10 intake: Too shrill for him
      2:00 work: Bottom screws out, bar slid from between the bobbins
      4:10 - mark the north side before you pull it
      6:40 = resistance 9.35 kΩ humbucker
      9:20 - I took the colours over from the other one, never metered them
      11:00 result: Rounder`,
  }),
  job({
    key: 'u-pair-hum-cancel',
    on: '2024-12-03',
    type: 'loose pickup',
    client: 'Elke Phantom',
    title: 'Pair of single coils, start and finish found',
    work: ['asked done: Tell me which lead is which'],
    traces: [
      {
        subject: 'neck single coil',
        conductors: 'yellow black',
        rows: ['poles'],
        joint: {
          at: '6:45',
          title: 'Yellow is the finish',
          lines: ['hot: yellow → finish of the coil', 'ground: black → start of the coil'],
        },
      },
    ],
    film: `
      0:10 intake: Two coils, cloth leads, no labels
      1:40 = resistance 5.71 kΩ neck single coil
      2:10 = resistance 6.02 kΩ middle single coil
      4:30 = polarity-kick 1 kick neck single coil, yellow on red lead
      5:10 = polarity-kick 1 kick middle single coil, yellow on red lead
      7:30 - other way wound and other pole up, so both on is quiet
      8:40 result: Labelled and bagged`,
  }),
];
