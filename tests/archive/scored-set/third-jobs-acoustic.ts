import { job } from './form';

/** Acoustic and bowed instruments of the third blind set. */
export const thirdAcousticJobs = [
  job({
    key: 'u-bridge-lifting',
    on: '2025-06-17',
    type: 'acoustic guitar',
    client: 'Nell Specimen',
    title: 'Bridge lifting at the back edge',
    work: ['asked done: Reglue the bridge', 'found done: Lacquer left under it // scraped to wood'],
    film: `
      0:10 intake: A card slides under
      0:45 = length 6 mm depth of the gap
      3:00 work: Warmed and lifted with a palette knife
      9:00 work: Lacquer ledge scraped
      13:00 work: Hot hide glue, three cauls
      26:00 result: Two days later, no daylight`,
  }),
  job({
    key: 'u-dry-crack',
    on: '2026-01-28',
    type: 'acoustic guitar',
    client: 'Idris Hypothetical',
    title: 'Crack in the soundboard after a winter by the stove',
    work: ['asked done: Close the crack', 'offered done: Talk about a humidifier'],
    parts: ['fitted stock: Four spruce cleats'],
    film: `
      0:10 intake: Opened up behind the soundhole
      0:40 = humidity 24 %RH inside the case
      1:10 = length 0.8 mm width of the crack
      1:40 - bone dry, so first we wait, ten days in the damp cupboard
      4:00 = humidity 48 %RH inside the case
      5:30 work: Hide glue worked in with a suction cup
      8:00 work: Four cleats across
      12:00 result: You have to know where it was`,
  }),
  job({
    key: 'u-tall-saddle',
    on: '2024-10-29',
    type: 'acoustic guitar',
    client: 'Fergus Anybody',
    title: 'Somebody sanded the saddle away',
    work: ['asked done: Rattles everywhere since he lowered it himself'],
    parts: ['fitted stock: Bone saddle blank', 'removed returned: Plastic saddle'],
    film: `
      0:10 intake: He sanded too far
      0:50 = string-height 1.3 mm sixth at twelve
      2:20 work: Bone blank shaped, compensated for the second
      9:00 = string-height 2.2 mm sixth at twelve
      9:40 = intonation 2 cents second string
      10:30 result: No rattle, full voice`,
  }),
  job({
    key: 'u-endpin-jack',
    on: '2023-02-14',
    type: 'acoustic guitar',
    client: 'Hilde Nobodyson',
    title: 'Strap button jack rattles loose',
    work: ['asked done: Jack turns when you plug in'],
    film: `
      0:10 intake: Spins and rattles
      1:00 diagnosis: Inner nut backed off
      2:30 work: Nut run up from inside, outer washer doubled
      4:30 result: Tight`,
  }),
  job({
    key: 'u-saddle-strip-quiet',
    on: '2026-09-02',
    type: 'acoustic guitar',
    client: 'Quentin Void',
    title: 'Sixth string quiet through the PA',
    work: ['asked done: Even up the strings plugged in'],
    film: `
      0:10 intake: Low E half as loud
      1:00 diagnosis: Piezo strip has a hump of dust below the slot
      1:20 - saddle bottom is not flat either, light shows under it
      3:30 work: Slot vacuumed, saddle trued on glass
      6:40 result: Six equal strings on the desk meter`,
  }),
  job({
    key: 'u-nylon-action',
    on: '2025-10-14',
    type: 'classical guitar',
    client: 'Carmen Anonyma',
    title: 'Hard to press, teacher says bring it down',
    work: ['asked done: Lower the strings'],
    film: `
      0:10 intake: Student, sore fingers
      0:45 = string-height 4.6 mm sixth at twelve
      1:00 = string-height 4.1 mm first at twelve
      2:40 work: Two and a bit off the saddle bone
      5:20 = string-height 3.4 mm sixth at twelve
      6:00 result: She smiles`,
  }),
  job({
    key: 'u-uke-friction',
    on: '2026-07-21',
    type: 'ukulele',
    client: 'Lio Unnamed',
    title: 'Friction pegs slip, always flat',
    work: ['asked done: Pegs that stay'],
    film: `
      0:10 intake: Flat by the second verse
      0:50 diagnosis: Peg washers greasy
      1:05 - somebody oiled these, worst thing you can do
      2:20 work: Degreased, nylon washers turned over, screws nipped up
      5:00 result: Half an hour on, still there`,
  }),
  job({
    key: 'u-banjo-skin',
    on: '2025-05-20',
    type: 'banjo',
    client: 'Jethro Makeup',
    title: 'Head burst, calfskin lapped on',
    work: ['asked done: New skin like the old one', 'offered declined: Plastic head'],
    parts: ['fitted client: Calfskin, soaked'],
    film: `
      0:10 intake: Burst in the hot car
      2:00 work: Skin soaked and tucked round the flesh hoop
      12:00 work: Drawn down a quarter turn at a time
      13:30 - let it dry a night before you dare
      20:00 = pitch 185 Hz tap tone
      21:00 result: Crisp`,
  }),
  job({
    key: 'u-cello-post-down',
    on: '2026-11-17',
    type: 'violin family',
    client: 'Ulrika Ghost',
    title: 'Cello: post fell over when the strings were off',
    work: ['asked done: Set the post'],
    film: `
      0:10 intake: Rolls about inside
      1:30 - all four slack first or the belly goes
      3:00 work: Post stood up with the setter, mirror through the f-hole
      9:00 = length 3.5 mm post behind the bridge foot
      11:00 result: Speaks again`,
  }),
  job({
    key: 'u-fiddle-seam',
    on: '2025-12-09',
    type: 'violin family',
    client: 'Moya Faux',
    title: 'Fiddle buzzes, lower bout seam open',
    work: ['asked done: Buzz on the open strings'],
    film: `
      0:10 intake: Buzz on anything near A
      0:50 diagnosis: Tap round the edge, lower bout says clack
      3:00 work: Thin hide glue on a blade, two spool clamps
      7:00 result: No clack, no buzz`,
  }),
  job({
    key: 'u-bow-hair',
    on: '2024-05-07',
    type: 'violin family',
    client: 'Moya Faux',
    title: 'Bow rehaired',
    work: ['asked done: Fresh hair', 'found done: Tip plug too small // new one from willow'],
    parts: ['fitted stock: Hank of white horsehair'],
    film: `
      0:10 intake: Half of the hair gone
      2:00 work: Plugs out, hank tied and combed wet
      15:00 work: Ferrule wedge in
      18:30 = mass 61.4 g bow
      19:00 result: Even ribbon`,
  }),
];
