import { job } from './form';

/** Bass guitars. */
export const bassJobs = [
  job({
    key: 'bass-action-low',
    on: '2024-03-18',
    type: 'bass guitar',
    client: 'Gunda Dryrun',
    title: 'Bass set-up for a light touch',
    work: ['asked done: Low as it goes without rattle'],
    film: `
      0:20 measurement: Before
      0:22 = string-height 2.9 mm E string, 12th fret
      0:30 = string-height 2.4 mm G string, 12th fret
      0:45 - almost three mil, that's a cheese slicer
      6:00 work: Rod a touch, saddles right down
      6:20 - little bit, little bit... stop
      14:00 result: One point eight on the bottom string
      14:03 = string-height 1.8 mm E string, 12th fret
      14:10 = string-height 1.5 mm G string, 12th fret`,
  }),
  job({
    key: 'bass-action-mid',
    on: '2025-09-15',
    type: 'bass guitar',
    client: 'Rasmus Standin',
    title: 'Four-string, medium set-up and strings',
    film: `
      0:15 intake: Digs in hard, wants room under the strings
      4:00 measurement: Where it ends up
      4:02 = string-height 2.6 mm E string, 12th fret
      4:12 = relief 0.4 mm neck
      6:00 result: Lots of air, no clank`,
  }),
  job({
    key: 'bass-preamp-dead',
    on: '2023-08-21',
    type: 'bass guitar',
    client: 'Nils Overexample',
    title: 'Active bass went silent on stage',
    film: `
      0:10 intake: Died halfway through a gig
      0:18 - he changed the cable, changed the amp, nothing
      1:30 measurement: Battery
      1:32 = voltage 2.1 V battery
      1:38 - two volts! it's flat. but hold on, why did it go flat in a week
      3:40 diagnosis: Jack ring stays connected, circuit never switches off
      6:10 work: New stereo jack
      8:30 measurement: Current with a plug in, and without
      8:33 = current 0.6 mA battery drain
      9:40 result: Off when it is unplugged`,
  }),
  job({
    key: 'bass-hum-split',
    on: '2024-05-27',
    type: 'bass guitar',
    client: 'Gunda Dryrun',
    title: 'Hum on the bridge pickup alone',
    film: `
      0:12 intake: Quiet with both, hums when soloed
      1:00 - that's what two singles do, she never noticed before the recording
      2:30 diagnosis: Nothing broken, it is single coil hum
      4:00 work: Explained, and lined the cavity with foil anyway
      12:00 result: Somewhat better, not gone`,
  }),
  job({
    key: 'bass-fretless-conv',
    on: '2023-04-11',
    type: 'bass guitar',
    client: 'Evka Whoever',
    title: 'Take the frets out',
    work: ['asked done: Turn it into a fretless', 'asked done: Lines left visible'],
    film: `
      0:30 intake: Cheap second bass, wants to try it without frets
      4:10 work: Frets pulled, slots filled with maple strips
      4:30 - glue, tap in, flush off when it's dry
      25:00 work: Board planed and hardened with thin glue
      25:20 - open the window for this, it stings
      40:00 work: Nut slots right down
      40:05 = nut-slot-depth 0.15 mm E string
      52:00 result: Mwah`,
  }),
  job({
    key: 'bass-neck-twist',
    on: '2025-02-17',
    type: 'bass guitar',
    client: 'Rasmus Standin',
    title: 'Neck twisted',
    film: `
      0:20 intake: One side fine, the other one rattles whatever you do
      2:10 diagnosis: Twist, bass side forward
      2:16 - winding sticks, look across them, that's two mil at least
      3:00 = relief 0.6 mm bass side
      3:10 = relief 0.1 mm treble side
      5:00 work: Heat blanket and clamps, two afternoons
      22:00 result: Half of it gone, playable
      22:10 - I said to her no promises, it may creep back`,
  }),
  job({
    key: 'bass-five-low-b',
    on: '2026-07-13',
    type: 'bass guitar',
    client: 'Nils Overexample',
    title: 'Low B floppy and dull',
    film: `
      0:15 intake: B like a rubber band
      1:20 measurement: String pull worked out
      1:22 = string-tension 128 N low B
      1:30 = length 864 mm scale
      3:30 work: Taper-wound set, string through the body
      8:00 result: Tighter, speaks
      8:04 = string-tension 151 N low B (stated)`,
  }),
  job({
    key: 'bass-pots-scratch',
    on: '2025-12-01',
    type: 'bass guitar',
    client: 'Evka Whoever',
    title: 'Knobs noisy',
    film: `
      0:10 intake: Both volumes rustle
      1:10 work: Cleaner into the potentiometers
      1:20 - through the gap by the lugs, work it, work it
      2:30 result: One clean, one still bad
      3:40 work: Replaced the bad one
      3:45 = resistance 243 kΩ neck volume pot
      5:00 result: Both silent`,
  }),
  job({
    key: 'bass-pickup-traced',
    on: '2023-10-09',
    filmed: '2023-10-11',
    type: 'bass guitar',
    client: 'Ulla Specimen',
    title: 'Soapbar with a fat cable, no drawing',
    traces: [
      {
        subject: 'bridge soapbar',
        conductors: 'red white green black',
        rows: ['inner', 'outer'],
        joint: {
          at: '9:15',
          title: 'Parallel, both coils',
          lines: ['hot: red + green → blend pot', 'ground: white + black + shield → pot case'],
        },
      },
    ],
    film: `
      0:15 intake: Bought loose, five wires, wants it in parallel
      1:30 measurement: Hunting for pairs
      1:33 = resistance 5.52 kΩ bridge soapbar [red-white]
      1:50 = resistance 5.47 kΩ bridge soapbar [green-black]
      2:00 - alright, two coils, five and a half each
      9:05 work: Reds and greens together for parallel
      11:40 result: Two point seven, as predicted
      11:42 = resistance 2.75 kΩ bridge soapbar, parallel`,
  }),
  job({
    key: 'bass-headless-tuner',
    on: '2026-10-05',
    type: 'bass guitar',
    client: 'Vreni Anyone',
    title: 'Tuning knob at the bridge end jammed',
    film: `
      0:15 intake: Headless thing, thumb wheel will not turn
      1:40 diagnosis: Thread galled, dry and full of grit
      4:00 work: Apart, cleaned, grease on every thread
      9:20 result: Turns with two fingers`,
  }),
];
