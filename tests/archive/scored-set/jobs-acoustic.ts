import { job } from './form';

/** Steel-string and classical guitars. */
export const acousticJobs = [
  job({
    key: 'bridge-lift-24',
    on: '2024-08-05',
    type: 'acoustic guitar',
    client: 'Mattis Lorem',
    title: 'Bridge coming up at the back',
    work: ['asked done: Reglue the bridge'],
    film: `
      0:12 intake: Paper slides under the back edge
      0:20 - a business card goes in nearly to the pins
      3:00 work: Heat and a thin knife, bridge off
      3:25 - slowly, listen, you hear the glue let go
      11:00 work: Old glue off both faces
      16:00 work: Hide glue, three deep clamps, cauls inside
      24:00 result: Tight all round
      24:10 - strings on tomorrow, not before`,
  }),
  job({
    key: 'bridge-lift-26',
    on: '2026-08-17',
    type: 'acoustic guitar',
    client: 'Saskia Ipsum',
    title: 'Bridge lifting after a hot car',
    film: `
      0:10 intake: Left in the boot in July, gap behind the bridge
      1:20 = humidity 38 %RH workshop
      4:00 work: Took the bridge off
      9:40 diagnosis: Finish under the bridge was never removed // glued to lacquer, held at the rim only
      9:46 - see, it was only ever stuck to paint
      15:00 work: Scraped to bare spruce and glued down
      21:00 result: Holds`,
  }),
  job({
    key: 'top-crack-winter',
    on: '2025-01-27',
    type: 'acoustic guitar',
    client: 'Yorick Tester',
    title: 'Crack in the top below the bridge',
    work: ['asked done: Mend the crack', 'offered done: Explain humidity to him'],
    film: `
      0:10 intake: Appeared over Christmas, stove in the room
      0:16 = humidity 24 %RH client's living room (stated)
      0:30 - twenty four percent. that's a desert
      3:00 work: A week in the damp cupboard, crack closes by itself
      6:20 work: Glue rubbed in, magnets across
      9:00 work: Three spruce cleats inside
      14:00 result: Hardly to be seen`,
  }),
  job({
    key: 'saddle-buzz',
    on: '2023-06-12',
    type: 'acoustic guitar',
    client: 'Ottilie Random',
    title: 'Sitar-like rattle on the open D',
    film: `
      0:15 intake: Only open, goes away with a capo
      1:40 diagnosis: Nut slot too low
      1:44 = nut-slot-depth 0.1 mm D string
      1:50 - it lies on the first fret, near enough
      4:00 work: Slot built up with bone dust and glue, cut again
      8:00 result: Rings
      8:03 = nut-slot-depth 0.5 mm D string`,
  }),
  job({
    key: 'piezo-uneven',
    on: '2024-12-09',
    type: 'acoustic guitar',
    client: 'Mattis Lorem',
    title: 'Under-saddle pickup: two strings hardly there',
    film: `
      0:20 intake: Plugged in, B and high E vanish
      2:30 diagnosis: Saddle does not bear evenly on the element
      2:36 - bottom of the bone is round as a barrel
      5:00 work: Saddle bottom flattened on glass
      9:10 result: Even across all six`,
  }),
  job({
    key: 'neck-reset',
    on: '2025-03-24',
    filmed: '2025-04-14',
    type: 'acoustic guitar',
    client: 'Ottilie Random',
    title: 'Neck angle gone, action sky high',
    work: ['asked done: Neck reset'],
    claims: ['year doubtful implied: about 1965 // label style'],
    film: `
      0:30 measurement: Before, with the saddle already as low as it goes
      0:33 = string-height 4.2 mm low E, 12th fret
      0:50 - four point two! and no saddle left to take off
      4:30 work: Steam into the dovetail
      4:50 - mind your hands. there. it's moving
      19:00 work: Heel shaved, a sheet of paper at a time
      41:00 work: Glued and clamped
      55:00 result: Straight edge lands on top of the bridge
      55:10 = string-height 2.3 mm low E, 12th fret`,
  }),
  job({
    key: 'loose-brace',
    on: '2026-05-11',
    type: 'acoustic guitar',
    client: 'Henk Dolor',
    title: 'Something buzzes inside when you knock it',
    film: `
      0:12 intake: Tap near the soundhole, zzz
      2:00 diagnosis: Brace loose at its end
      2:06 - mirror in, lamp in, feeler gauge goes under, there's the culprit
      4:30 work: Glue in with a palette knife, jack under it
      8:00 result: Knock knock, nothing`,
  }),
  job({
    key: 'tuner-old-acoustic',
    on: '2023-01-30',
    type: 'acoustic guitar',
    client: 'Yorick Tester',
    title: 'Old open gears stiff',
    film: `
      0:20 intake: Hardly turn, wants to keep them because they are original
      2:00 work: Off, brushed in spirit, one drop of oil each
      2:20 - spirit fumes, door open
      7:30 result: Smooth, and they stay on`,
    claims: ['original part (tuners) certain implied: original to the guitar // screw holes never filled'],
  }),
  job({
    key: 'pickguard-curl',
    on: '2024-04-22',
    type: 'acoustic guitar',
    client: 'Saskia Ipsum',
    title: 'Scratchplate curling off',
    film: `
      0:15 intake: Shrunk and curled, pulling at the spruce
      2:10 work: Warmed and eased off
      6:00 work: Flattened between plates, back on with fresh film
      9:30 result: Lies flat`,
  }),
  job({
    key: 'acoustic-pickup-install',
    on: '2025-07-07',
    type: 'acoustic guitar',
    client: 'Henk Dolor',
    title: 'Fit a pickup under the saddle',
    work: ['asked done: Install under-saddle element with end-pin socket'],
    parts: ['fitted client: under-saddle element with preamp'],
    film: `
      0:20 intake: Brought his own kit, stage next week
      4:00 work: Slot squared, hole for the lead at the end
      12:00 work: Tail block reamed to half an inch
      12:10 - slow, ream from outside, tape on the finish
      18:00 measurement: Battery and drain
      18:02 = voltage 9.3 V battery
      18:10 = current 0.4 mA preamp
      21:00 result: Plugged in, balanced`,
  }),
  job({
    key: 'nylon-buzz',
    on: '2024-02-05',
    type: 'classical guitar',
    client: 'Linde Vacant',
    title: 'Bass strings slap',
    film: `
      0:15 intake: Plays flamenco on a concert guitar, strings hit the frets
      1:30 measurement: Heights at the twelfth
      1:32 = string-height 2.7 mm low E, 12th fret
      1:40 - too low for her right hand, simple as that
      4:00 work: New saddle, a good bit taller
      9:00 result: Four millimetres, no slap
      9:02 = string-height 4.0 mm low E, 12th fret`,
  }),
  job({
    key: 'classical-rosette',
    on: '2025-10-06',
    type: 'classical guitar',
    client: 'Arvid Generic',
    title: 'Side split from a knock',
    film: `
      0:12 intake: Dropped on the corner of a chair
      2:20 work: Split pulled together with a turnbuckle across
      6:00 work: Thin glue and linen strip inside
      6:10 - old trick, linen, better than wood on a curve
      14:00 work: Shellac touched in
      19:00 result: You have to know where it was`,
  }),
  job({
    key: 'classical-tuners',
    on: '2026-11-02',
    type: 'classical guitar',
    client: 'Linde Vacant',
    title: 'Rollers grind',
    parts: ['fitted stock: pair of three-on-plate machine heads'],
    film: `
      0:10 intake: Grinding when she tunes, A slips back
      1:30 diagnosis: Plastic rollers cracked
      3:30 work: New plates, same spacing
      3:36 = length 35 mm roller spacing
      6:40 result: Like butter`,
  }),
  job({
    key: 'classical-bridge-flew',
    on: '2023-08-07',
    type: 'classical guitar',
    client: 'Arvid Generic',
    title: 'Bridge flew off overnight',
    film: `
      0:10 intake: Bang at two in the morning, she says
      0:15 - somebody put steel strings on a nylon guitar. of course it did
      2:00 diagnosis: Steel strings pulled it off
      5:00 work: Torn fibres laid back, bridge glued
      14:00 work: Nylon strings on again
      16:00 result: Sound as a bell`,
  }),
  job({
    key: 'classical-nut-new',
    on: '2024-10-28',
    type: 'classical guitar',
    client: 'Quirin Beispiel',
    title: 'Cracked nut',
    work: ['asked done: New nut from bone'],
    parts: ['fitted stock: bone blank, 52 mm'],
    film: `
      0:15 intake: Plastic nut in two pieces
      1:10 = length 52 mm nut width
      2:00 work: Bone shaped and slotted
      2:10 - stinks, doesn't it. mask, always, with bone
      16:00 result: Spacing even, ends round`,
  }),
  job({
    key: 'french-polish',
    on: '2026-01-12',
    type: 'classical guitar',
    client: 'Linde Vacant',
    title: 'Top worn dull by the arm',
    film: `
      0:20 intake: Sweat took the shine off
      3:00 work: Spirit and shellac with a rubber
      3:20 - figure of eights, never stop on it
      30:00 result: Mirror`,
  }),
  job({
    key: 'acoustic-fret-sprout',
    on: '2025-02-03',
    type: 'acoustic guitar',
    client: 'Fenna Mustermann',
    title: 'Fret ends stick out',
    film: `
      0:10 intake: Cuts her fingers along the edge since the heating went on
      1:00 = humidity 29 %RH case
      3:20 work: Ends filed flush and rounded
      3:30 - tape on the binding. forty four ends
      15:00 result: Smooth as a pebble`,
  }),
  job({
    key: 'twelve-string',
    on: '2023-11-27',
    type: 'acoustic guitar',
    client: 'Hanno Exemplar',
    title: 'Twelve-string, tuned a tone down',
    film: `
      0:20 intake: Belly up behind the bridge
      1:30 measurement: Neck and belly
      1:33 = relief 0.55 mm neck
      1:45 = string-height 3.3 mm low E, 12th fret
      4:00 work: Light set, tuned to D
      9:00 result: Belly sank by a millimetre
      9:03 = string-height 2.5 mm low E, 12th fret`,
  }),
];
