import { job } from './form';

/** Ukuleles, mandolins and banjos. */
export const smallJobs = [
  job({
    key: 'uke-bridge-off',
    on: '2024-06-03',
    type: 'ukulele',
    client: 'Bo Filler',
    title: 'Bridge popped off',
    film: `
      0:10 intake: Came off in one piece, took some veneer along
      2:00 work: Splinters back in their places
      5:00 work: Glued, one bar clamp
      9:00 result: On for good`,
  }),
  job({
    key: 'uke-intonation',
    on: '2025-05-12',
    type: 'ukulele',
    client: 'Wenda Plainly',
    title: 'Sharp on the first frets',
    film: `
      0:15 intake: F chord sour, open strings fine
      1:20 measurement: Pressed at the first fret
      1:22 = intonation 18 cents C string, 1st fret
      1:28 - eighteen, that's the nut standing way too tall
      2:00 = nut-slot-depth 1.1 mm C string
      4:00 work: All four slots filed
      6:30 result: Four cents
      6:32 = intonation 4 cents C string, 1st fret`,
  }),
  job({
    key: 'uke-tuner-friction',
    on: '2023-07-24',
    type: 'ukulele',
    client: 'Bo Filler',
    title: 'Pegs will not stay',
    film: `
      0:10 intake: Friction pegs turn back on their own
      1:10 work: Screws up a quarter, washers changed
      3:00 result: Holds, child can still turn them`,
  }),
  job({
    key: 'uke-crack-side',
    on: '2026-02-23',
    type: 'ukulele',
    client: 'Tamsin Blank',
    title: 'Sat on',
    work: ['asked done: See whether it can be saved', 'found done: Loose brace under the top'],
    film: `
      0:10 intake: Somebody sat on it at a party
      0:15 - oh no. oh well. side's caved in, back's off
      4:00 work: Pieces puzzled together with thin glue
      17:00 work: Back on with spool clamps
      26:00 result: Ugly and loud`,
  }),
  job({
    key: 'uke-pickup',
    on: '2025-11-24',
    type: 'ukulele',
    client: 'Saskia Ipsum',
    title: 'Contact pickup quiet',
    film: `
      0:15 intake: Hardly anything comes out
      1:20 measurement: Disc on the meter
      1:23 = capacitance 14 nF contact disc
      3:00 diagnosis: Disc hanging off, tape gave up
      4:30 work: Stuck under the bridge plate with putty
      6:00 result: Three times as loud`,
  }),
  job({
    key: 'mando-bridge',
    on: '2024-09-16',
    type: 'mandolin',
    client: 'Ragna Nowhere',
    title: 'Will not play in tune above the seventh',
    film: `
      0:15 intake: Bridge had slid in the case
      1:30 measurement: Harmonic against fretted
      1:32 = intonation 22 cents E course
      2:30 work: Bridge foot moved back, marked in pencil
      5:00 result: Three cents on all courses
      5:03 = intonation 3 cents E course`,
  }),
  job({
    key: 'mando-tailpiece',
    on: '2025-04-28',
    type: 'mandolin',
    client: 'Ragna Nowhere',
    title: 'Metallic ringing after each chop',
    film: `
      0:12 intake: A jangle behind the note
      1:00 - damp behind the bridge with my hand, gone. so it's back there
      1:40 diagnosis: Tailpiece cover rattles
      2:50 work: Felt under the cover
      4:00 result: Dry`,
  }),
  job({
    key: 'mando-refret',
    on: '2023-03-20',
    filmed: '2023-04-03',
    type: 'mandolin',
    client: 'Imke Nobody',
    title: 'Bar frets worn to nothing',
    work: ['asked done: Refret, modern wire'],
    film: `
      0:20 intake: Flat bars, nothing left
      0:40 = fret-height 0.3 mm 3rd fret
      5:00 work: Bars out, slots widened for tanged wire
      22:00 work: Twenty of the small ones in
      35:00 result: Plays itself
      35:03 = fret-height 1.0 mm 3rd fret`,
  }),
  job({
    key: 'mando-action',
    on: '2026-03-30',
    type: 'mandolin',
    client: 'Imke Nobody',
    title: 'Hard to press down',
    film: `
      0:15 measurement: At the twelfth
      0:17 = string-height 2.2 mm G course, 12th fret
      2:00 work: Thumb wheels down
      3:30 result: Easy now
      3:32 = string-height 1.5 mm G course, 12th fret`,
  }),
  job({
    key: 'mando-magnetic',
    on: '2024-11-25',
    type: 'mandolin',
    client: 'Ragna Nowhere',
    title: 'Electric mandolin, weak and noisy',
    film: `
      0:15 intake: Solid body, one small pickup
      1:30 measurement: The coil
      1:33 = resistance 3.4 kΩ pickup
      2:30 diagnosis: String ground missing
      4:00 work: Wire from the tailpiece to the pot case
      6:00 result: Noise gone, still a bit weak`,
  }),
  job({
    key: 'mando-neck-joint',
    on: '2023-12-11',
    type: 'mandolin',
    client: 'Henk Dolor',
    title: 'Gap at the heel',
    film: `
      0:12 intake: Neck pulls away, daylight at the heel
      3:00 work: Warm glue run in, strap clamp round the body
      9:00 result: Gap closed, action came down by itself
      9:04 = string-height 1.7 mm G course, 12th fret`,
  }),
  job({
    key: 'banjo-head',
    on: '2024-05-06',
    type: 'banjo',
    client: 'Knud Vague',
    title: 'Dull and soft',
    film: `
      0:15 intake: No bark left in it
      1:20 diagnosis: Head slack
      1:24 - thumb goes right in
      2:00 measurement: Tapped the skin, pitch of the drum
      2:03 = pitch 311 Hz head
      3:30 work: Hooks up an eighth at a time, crosswise
      8:00 result: Up to a G sharp, barks
      8:04 = pitch 415 Hz head`,
  }),
  job({
    key: 'banjo-head-split',
    on: '2025-08-25',
    type: 'banjo',
    client: 'Knud Vague',
    title: 'Skin burst',
    work: ['asked done: New head'],
    parts: ['fitted stock: frosted plastic head, 11 inch'],
    film: `
      0:10 intake: Split right across on a hot day
      3:00 work: All hooks off, rim cleaned
      9:00 work: New one on, finger tight, then round and round
      19:00 result: Even all the way
      19:04 = pitch 392 Hz head`,
  }),
  job({
    key: 'banjo-fifth-peg',
    on: '2023-05-29',
    type: 'banjo',
    client: 'Tove Unnamed',
    title: 'Short string slips',
    film: `
      0:12 intake: Fifth string drops a tone every few minutes
      1:30 diagnosis: Fifth peg worn smooth
      3:00 work: Hole bushed, geared peg pressed in
      6:00 result: Stays`,
    parts: ['fitted stock: geared fifth peg'],
  }),
  job({
    key: 'banjo-buzz-coordinator',
    on: '2026-04-13',
    type: 'banjo',
    client: 'Tove Unnamed',
    title: 'Buzz from inside the pot',
    film: `
      0:12 intake: Sizzle on low notes
      2:00 diagnosis: Nut loose on the coordinator rod
      2:05 - rod rings when you flick it
      3:00 work: Tightened, drop of lock
      4:00 result: Gone`,
  }),
  job({
    key: 'banjo-neck-angle',
    on: '2024-12-16',
    type: 'banjo',
    client: 'Knud Vague',
    title: 'Strings a mile off the board',
    film: `
      0:20 measurement: Height at the twelfth
      0:22 = string-height 4.6 mm 4th string, 12th fret
      3:00 work: Shim between neck and rim, rod nuts reset
      9:00 work: Lower bridge, five eighths
      12:00 result: Three and a bit
      12:02 = string-height 3.1 mm 4th string, 12th fret`,
  }),
];
