import { job } from './form';

/** Fiddle family, free reeds, woodwind, drums and harp of the second blind set. */
export const secondOtherJobs = [
  job({
    key: 's-fiddle-post-down',
    on: '2024-09-10',
    type: 'violin family',
    client: 'Cosima Figment',
    title: 'Sound post rolling about inside',
    work: ['asked done: Post fell over'],
    film: `
      0:10 intake: Took all the strings off at once, post fell
      0:30 - hear it roll. never all four at once, folks
      1:20 work: Setter through the f-hole, third go lucky
      4:00 work: Bridge up, strings on one by one
      6:00 result: Post straight both ways`,
  }),
  job({
    key: 's-fiddle-tone',
    on: '2026-03-24',
    type: 'violin family',
    client: 'Elmer Invented',
    title: 'Shrill top string, post nudged',
    work: ['asked done: E is shrill'],
    film: `
      0:10 intake: E like a dentist's drill
      1:00 work: Post a hair toward the bar
      1:10 - half a millimetre. play. half a millimetre. play
      3:00 result: Sweeter, G not lost`,
  }),
  job({
    key: 's-cello-seam',
    on: '2025-12-02',
    type: 'violin family',
    client: 'Aurelia Notreal',
    title: 'Cello lower bout open along the back',
    work: ['asked done: Buzz on low notes', 'found done: Lower rib seam closed'],
    film: `
      0:12 intake: Buzzes since the heating went on
      0:40 diagnosis: Knuckles round the edge, hollow knock at the bottom
      1:30 work: Warm thin hide glue on a knife, spool clamps
      8:00 = humidity 41 %RH shop
      8:20 result: Knocks solid`,
  }),
  job({
    key: 's-viola-pegs',
    on: '2023-08-16',
    type: 'violin family',
    client: 'Aurelia Notreal',
    title: 'Viola pegs stuck fast in the muggy weather',
    work: ['asked done: Cannot turn two of them'],
    film: `
      0:10 intake: Swollen solid
      1:00 work: Tapped out from the small end with a dowel
      2:00 work: Shaved a whisker, paste on
      2:30 - chalk to grip, soap to slip, paste does both
      4:00 result: Turns and stays`,
  }),
  job({
    key: 's-bow-screw',
    on: '2026-11-17',
    type: 'violin family',
    client: 'Elmer Invented',
    title: 'Bow will not tighten',
    work: ['asked done: Bow slack', 'offered declined: Rehair // has a spare bow'],
    parts: ['fitted stock: Brass eyelet'],
    film: `
      0:10 intake: Screw turns and turns, nothing happens
      0:40 diagnosis: Eyelet thread stripped
      1:30 work: New brass eyelet in the frog
      3:00 result: Tightens in four turns`,
  }),
  job({
    key: 's-squeeze-reed',
    on: '2025-11-12',
    type: 'accordion',
    client: 'Dimitri Phoney',
    title: 'Accordion, one note silent on the push',
    work: ['asked done: Silent note'],
    film: `
      0:12 intake: F above the middle, push only
      1:40 diagnosis: Fluff between tongue and plate
      1:48 - one dog hair. one
      2:20 work: Slip of paper drawn under the tongue
      3:00 = pitch 697 Hz the F
      3:10 result: Speaks both ways`,
  }),
  job({
    key: 's-squeeze-bellows',
    on: '2024-10-23',
    type: 'accordion',
    client: 'Dimitri Phoney',
    title: 'Squeezebox wheezes, air escaping',
    work: ['asked done: Drops open by itself'],
    parts: ['fitted stock: Bellows tape', 'fitted stock: Gasket strip, chamois'],
    film: `
      0:10 intake: Falls open in four seconds, ought to hold for thirty
      1:00 diagnosis: Corners gone in two folds
      2:00 work: Taped the corners, gasket renewed all round
      9:00 result: Holds half a minute`,
  }),
  job({
    key: 's-flute-pads',
    on: '2026-02-18',
    type: 'flute',
    client: 'Aurelia Notreal',
    title: 'Flute, low notes will not speak',
    work: ['asked done: Bottom D and C weak'],
    parts: ['fitted stock: Two skin pads, right hand'],
    film: `
      0:10 intake: Nothing under E
      0:50 diagnosis: Feeler paper slides under the F key
      1:40 - leak light agrees, moon shaped glow
      3:00 work: Two pads new, paper shims a quarter round
      12:00 result: Low C at a whisper`,
  }),
  job({
    key: 's-clarinet-cork',
    on: '2023-09-20',
    type: 'clarinet',
    client: 'Agathe Whatsit',
    title: 'Clarinet wobbles in the middle',
    work: ['asked done: Loose joint'],
    parts: ['fitted stock: Sheet cork 1.6 mm'],
    film: `
      0:10 intake: Top half droops when she lifts it
      1:00 work: Old cork off the tenon, new strip glued, sanded to fit
      1:20 - bevel the lap or it shows
      6:00 result: Snug, with a smear of grease`,
  }),
  job({
    key: 's-sax-bent',
    on: '2026-07-01',
    type: 'saxophone',
    client: 'Dimitri Phoney',
    title: 'Alto sax fell, octave key bent',
    work: ['asked done: Warbles in the upper register', 'found declined: Dent in the bow // does not hurt'],
    film: `
      0:10 intake: Off the stand, onto the wing
      0:40 diagnosis: Neck ring touches the octave pip lever
      1:30 work: Ring eased round with a mandrel, cork back on
      3:00 result: Octaves clean`,
  }),
  job({
    key: 's-drum-lug',
    on: '2025-05-20',
    type: 'drum',
    client: 'Sunniva Nobody',
    title: 'Tom loses its tuning at one rod',
    work: ['asked done: One corner goes slack'],
    parts: ['fitted stock: Swivel nut and spring for one lug'],
    film: `
      0:10 intake: Two songs and it flaps
      0:40 diagnosis: Threads stripped in the lug's swivel nut
      1:30 work: Insert swapped, felt stuffed in so it won't rattle
      3:00 result: Holds through a beating`,
  }),
  job({
    key: 's-drum-strainer',
    on: '2024-08-28',
    type: 'drum',
    client: 'Gideon Nemo',
    title: 'Snare throw-off slips open',
    work: ['asked done: Lever drops mid song'],
    parts: ['fitted client: Throw-off from another drum', 'fitted stock: Cord for the wires'],
    film: `
      0:10 intake: Wires go off by themselves
      0:40 diagnosis: Cam worn flat
      1:00 work: Client's throw-off on, one hole drilled new
      4:00 result: Clicks and stays up`,
  }),
  job({
    key: 's-harp-lever',
    on: '2026-06-24',
    type: 'harp',
    client: 'Luned Placeholder',
    title: 'Harp lever buzzes on the sharpened F',
    work: ['asked done: Buzz with one lever up', 'offered open: Regulate the other levers'],
    film: `
      0:10 intake: Only that one and only when it's up
      0:40 diagnosis: String does not sit square on the cam
      1:30 work: Lever moved down the neck by a hair
      2:00 = intonation 4 cents sharpened F
      2:10 result: Clean, four cents high, she can live with it`,
  }),
];
