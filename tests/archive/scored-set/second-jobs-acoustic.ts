import { job } from './form';

/** Acoustic and classical guitars, banjos, mandolin, ukulele of the second blind set. */
export const secondAcousticJobs = [
  job({
    key: 's-ac-bridge-first',
    on: '2024-01-18',
    type: 'acoustic guitar',
    client: 'Betsy Testcase',
    title: 'Bridge lifting at the back edge',
    work: ['asked done: Bridge coming up'],
    film: `
      0:14 intake: Business card goes in as far as the pins
      1:00 = humidity 38 %RH shop
      2:20 work: Heat and a palette knife, bridge off in one
      2:50 - warm, wait, wiggle, do not lever
      9:00 work: Scraped to bare wood both sides, glued, clamped overnight
      15:00 result: No light under it`,
  }),
  job({
    key: 's-ac-bridge-plate',
    on: '2026-02-05',
    type: 'acoustic guitar',
    client: 'Hamish Unreal',
    title: 'Bridge up again, plate inside worn out',
    work: ['asked done: Bridge glued', 'found done: Bridge plate capped with maple'],
    film: `
      0:10 intake: Third time this bridge has been up, not my doing
      1:20 diagnosis: Ball ends have chewed through the plate
      1:28 - mirror in there, it's like Swiss cheese
      6:00 work: Maple cap under the old plate, six holes drilled through
      14:00 work: Bridge down, cauls and three deep clamps
      24:00 = string-height 2.4 mm low E, 12th fret
      24:10 result: Flat behind the bridge again`,
  }),
  job({
    key: 's-ac-plate-only',
    on: '2025-07-17',
    type: 'acoustic guitar',
    client: 'Betsy Testcase',
    title: 'Pins pop out when tuning up',
    work: ['asked done: Bridge pins creep up'],
    parts: ['fitted client: Bone pins, unslotted'],
    film: `
      0:12 intake: Ping, and a pin in the eye nearly
      0:40 diagnosis: Ball sits under the pin instead of on the wood
      2:00 work: Holes plugged, reamed, slots cut toward the saddle
      2:20 - seat the ball forward, then push the pin, that's all it is
      7:00 result: Pins hold`,
  }),
  job({
    key: 's-ac-crack',
    on: '2025-02-25',
    type: 'acoustic guitar',
    client: 'Hamish Unreal',
    title: 'Dried out, split below the bridge',
    work: ['asked done: Split in the top'],
    film: `
      0:10 intake: Hung over a radiator all winter
      0:22 = humidity 27 %RH inside the body
      0:30 - twenty seven, no wonder
      1:10 work: A week in the box with wet sponges first
      6:00 = humidity 49 %RH inside the body
      6:40 work: Hide glue, magnets, four spruce cleats inside
      11:00 result: Closed, you can feel it but not see it`,
  }),
  job({
    key: 's-ac-undersaddle',
    on: '2026-09-09',
    type: 'acoustic guitar',
    client: 'Mina Egsample',
    title: 'Two strings faint through the PA',
    work: ['asked done: B and high E quiet when plugged in'],
    film: `
      0:12 intake: Fine in the room, faint in the speaker
      1:00 diagnosis: Saddle bottom is not flat on the strip
      1:10 - rocks like a three legged stool the wrong way round
      2:00 work: Bottom of the saddle sanded true on glass, grit out of the channel
      5:00 result: All six even`,
  }),
  job({
    key: 's-class-brace',
    on: '2026-06-11',
    type: 'classical guitar',
    client: 'Agathe Whatsit',
    title: 'Nasty buzz on the low A note',
    work: ['asked done: Buzz'],
    film: `
      0:14 intake: Only when it hits A, nothing else
      1:00 diagnosis: Fan strut loose at its foot
      1:12 - knock knock... there, that's the rattle, inside left
      3:00 work: Thin hide glue syringed under, prop from the back
      8:00 = pitch 110 Hz the A that buzzed
      8:20 result: Clear`,
  }),
  job({
    key: 's-banjo-skin',
    on: '2024-04-17',
    type: 'banjo',
    client: 'Elmer Invented',
    title: 'Torn skin, plastic put on',
    work: ['asked done: New vellum', 'asked not done: Calf skin // could not be had in the size'],
    parts: ['fitted stock: Frosted plastic head 11 in', 'removed returned: Torn calf head'],
    film: `
      0:10 intake: Cat did it
      0:30 = length 11 in rim across
      3:00 work: All hooks off, head on, round and round a quarter turn
      14:00 result: Even all round`,
  }),
  job({
    key: 's-banjo-slack',
    on: '2026-10-06',
    type: 'banjo',
    client: 'Elmer Invented',
    title: 'Tubby tone, head slack',
    work: ['asked done: Sounds like a cardboard box'],
    film: `
      0:10 intake: Damp caravan, tubby
      0:40 = pitch 330 Hz tap tone of the head
      1:00 work: Hooks up an eighth of a turn at a time
      5:00 = pitch 392 Hz tap tone of the head
      5:10 - there's the G, stop there before it goes bang
      5:30 result: Snap is back`,
  }),
  job({
    key: 's-banjo-fifth',
    on: '2025-03-19',
    type: 'banjo',
    client: 'Cosima Figment',
    title: 'Drone string will not hold',
    work: ['asked done: Fifth peg slips'],
    parts: ['fitted stock: Geared fifth peg'],
    film: `
      0:12 intake: Push-in friction peg just unwinds
      1:10 work: Old one out with heat, hole reamed to taper
      3:00 work: Geared one pressed in with a clamp
      4:00 result: Holds the drone`,
  }),
  job({
    key: 's-mando-rattle',
    on: '2025-11-04',
    type: 'mandolin',
    client: 'Cosima Figment',
    title: 'Something jingles on every chop',
    work: ['asked done: Find the jingle'],
    film: `
      0:12 intake: Jingles like a tambourine
      1:00 diagnosis: String ends beyond the bridge
      1:06 - thumb on the tailpiece cover and it stops
      1:40 work: Felt under the cover, leather through the afterlength
      2:40 result: Dry chop`,
  }),
  job({
    key: 's-uke-bridge',
    on: '2026-05-19',
    type: 'ukulele',
    client: 'Betsy Testcase',
    title: 'Ukulele bridge flew off',
    work: ['asked done: Stick the bridge back'],
    film: `
      0:10 intake: Left in a hot car
      0:20 - gone with a crack on the motorway she says
      1:30 work: Lacquer scraped from under, glued, cam clamps
      6:00 result: At pitch for a weekend`,
  }),
  job({
    key: 's-ac-neck-shim',
    on: '2024-07-30',
    type: 'acoustic guitar',
    client: 'Fedor Blank',
    title: 'Bolt-on neck, angle changed',
    work: ['asked done: Action too high, saddle already gone to nothing'],
    film: `
      0:10 intake: Saddle's flush and it still plays like an egg slicer
      0:30 = string-height 3.6 mm low E, 12th fret
      2:00 work: Bolts out, heel pared at the sides, wedge under the tongue
      15:00 = string-height 2.3 mm low E, 12th fret
      15:10 result: There's saddle to spare now`,
  }),
];
