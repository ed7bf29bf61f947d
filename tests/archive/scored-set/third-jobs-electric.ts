import { job } from './form';

/** Electric guitars of the third blind set. */
export const thirdElectricJobs = [
  job({
    key: 'u-howl-wax',
    on: '2024-03-12',
    type: 'electric guitar',
    client: 'Bram Placeholder',
    title: 'Squeals as soon as he faces the amp',
    features: 'one coil at the slanted plate, ash body',
    work: ['asked done: Cure the squeal', 'offered done: Clean the switch // was on the table anyway'],
    film: `
      0:08 intake: Shrieks at stage volume
      0:30 - if I tap the cover with a screwdriver you hear it plain as day through the speaker
      2:10 diagnosis: Windings loose on the former
      2:40 = resistance 6.88 kΩ bridge coil
      4:05 work: Dipped in wax // sixty-five degrees, twenty minutes, no more bubbles
      4:30 - beeswax one part, paraffin four parts, never on a naked flame
      9:12 = resistance 6.87 kΩ bridge coil
      10:40 result: Stands a foot from the cab and stays quiet`,
  }),
  job({
    key: 'u-howl-cover',
    on: '2025-09-03',
    type: 'electric guitar',
    client: 'Lorna Dummyname',
    title: 'High-pitched squeal with gain, neck humbucker',
    work: ['asked done: Find the squeal'],
    film: `
      0:10 intake: Only squeals on the neck humbucker
      1:20 diagnosis: Metal cover loose, rattles against the bobbins
      1:35 - it is the can, not the coil, press with a thumb and the howl is gone
      3:00 = resistance 7.61 kΩ neck
      3:50 work: Cover bedded on a bead of silicone, resoldered both sides
      8:20 result: Gain all the way, nothing`,
  }),
  job({
    key: 'u-whammy-pivot',
    on: '2025-04-08',
    type: 'electric guitar',
    client: 'Stig Nobody',
    title: 'Whammy never comes back in tune',
    work: [
      'asked done: Make the arm return to pitch',
      'found done: Two posts leaning forward // bushings pressed back',
    ],
    parts: ['fitted stock: Pair of pivot posts', 'removed returned: Old posts'],
    film: `
      0:20 intake: Dive and it is eight cents sharp afterwards
      0:50 = intonation 8 cents sixth after a dive
      1:50 diagnosis: Blunt where the plate rocks on the posts
      2:05 - see that shiny flat, that should come to a point like a chisel
      5:30 work: Stoned the plate to a point again
      8:00 work: New posts, springs balanced
      12:15 = intonation 1 cents sixth after a dive
      12:40 result: Comes home every time`,
  }),
  job({
    key: 'u-trem-block',
    on: '2023-10-17',
    type: 'electric guitar',
    client: 'Hesper Samplewoman',
    title: 'Tremolo blocked off for good',
    work: ['asked done: Block the tremolo so it stays put', 'offered declined: Take the arm off too'],
    film: `
      0:05 intake: She never uses the bar, strings go out when she bends
      1:15 = length 18.4 mm gap behind the tremolo block
      2:00 work: Maple block cut to eighteen and a half, pressed in
      4:20 work: Five springs on
      5:10 result: Double stops stay true`,
  }),
  job({
    key: 'u-high-seventh',
    on: '2026-02-11',
    type: 'electric guitar',
    client: 'Anselm Testcase',
    title: 'Chokes out when bending above the seventh',
    work: ['asked done: Buzz round the seventh', 'offered declined: Full fret level // one fret only'],
    film: `
      0:10 intake: Buzz and choke, first two strings
      0:55 = relief 0.30 mm first to seventeenth
      1:40 diagnosis: Seventh fret lifted at the treble end
      1:48 - rocker sits on it like a see-saw
      3:10 work: Tapped down and wicked thin glue under it
      6:30 work: Light crown and polish on that one fret
      8:00 = string-height 1.6 mm first string at twelve
      8:45 result: Bends two tones, clean`,
  }),
  job({
    key: 'u-stainless-frets',
    on: '2024-06-19',
    type: 'electric guitar',
    client: 'Wanda Invented',
    title: 'Refret in stainless',
    features: 'bolt-on maple neck, lacquered board',
    work: ['asked done: Refret, tall and narrow, stainless', 'offered done: New nut to suit'],
    parts: ['fitted stock: Twenty-two stainless frets', 'fitted stock: Bone nut'],
    film: `
      0:15 intake: Worn to nothing at the cowboy chords
      0:40 = fret-height 0.62 mm second fret, under the third string
      3:00 work: Old frets out, iron and flush nippers // glasses on, the bits fly
      14:30 work: Slots cleaned, lacquer scored first
      21:00 work: Stainless wire pressed
      22:10 - this stuff eats files so take your time with the ends
      40:00 work: Level, crown, ends hemispherical
      47:30 = fret-height 1.38 mm second fret
      49:00 result: Glassy`,
  }),
  job({
    key: 'u-zing-third',
    on: '2025-11-19',
    type: 'electric guitar',
    client: 'Odo Fictive',
    title: 'Third string zings when nothing is fretted',
    work: ['asked done: Zing on the third', 'found done: Slot had no fall towards the pegs'],
    film: `
      0:12 intake: Zzzing, like a wasp in there
      1:05 = nut-slot-depth 0.45 mm third string at the first fret
      1:30 diagnosis: Nut slot flat, string leaves it halfway back
      1:44 - it has to take off right at the front, else it buzzes in the channel
      3:20 work: Recut with a fall of five degrees or so
      5:00 result: Rings like a bell`,
  }),
  job({
    key: 'u-lever-three',
    on: '2024-09-10',
    type: 'electric guitar',
    client: 'Pia Egsample',
    title: 'Three-way lever: middle position drops out',
    work: ['asked done: Middle position cuts in and out', 'offered declined: New lever switch'],
    film: `
      0:10 intake: Middle goes missing
      1:00 = resistance 46 Ω middle, contact to contact
      1:30 diagnosis: Black film on the wipers
      2:20 work: Strip of card with contact cleaner drawn through
      3:40 = resistance 0.2 Ω middle, contact to contact
      4:10 result: All three there`,
  }),
  job({
    key: 'u-lever-five',
    on: '2026-05-06',
    type: 'electric guitar',
    client: 'Corin Makebelieve',
    title: 'Five-way selector swapped',
    work: ['asked done: New five-way selector'],
    parts: ['fitted client: Five-way lever switch', 'removed kept: Old selector, cracked wafer'],
    film: `
      0:10 intake: Lever flops about, wafer cracked
      1:20 - drew every lug before I touched the iron
      2:30 work: Old selector out, seven leads tagged
      9:50 work: New one in, same lugs
      14:00 result: Five clear sounds, no pop`,
  }),
  job({
    key: 'u-push-pull-split',
    on: '2025-03-27',
    type: 'electric guitar',
    client: 'Tamsin Notreal',
    title: 'Bridge humbucker traced, split on a push-pull',
    work: [
      'asked done: Split the bridge humbucker',
      'found done: Colours follow no chart // traced by meter',
    ],
    parts: ['fitted stock: Push-pull pot 500k'],
    traces: [
      {
        subject: 'bridge humbucker',
        conductors: 'red white green black bare',
        joint: {
          at: '18:20',
          title: 'Series, link to the push-pull',
          lines: [
            'hot: green → input lug of the volume pot',
            'joined: red + white → push-pull, middle lug',
            'ground: black + bare → back of the pot',
          ],
        },
      },
    ],
    film: `
      0:10 intake: Wants single sounds at the bridge
      2:00 measurement: Which goes with which
      2:20 = resistance 4.09 kΩ coil [green-red]
      2:50 = resistance 4.12 kΩ coil [white-black]
      4:00 = polarity-kick 1 kick bridge humbucker, green on red lead
      4:40 = polarity-kick 1 kick bridge humbucker, white on red lead
      17:50 work: Soldered to the push-pull
      21:00 = resistance 8.21 kΩ bridge humbucker in series
      21:30 = resistance 4.12 kΩ split
      23:00 result: Thin when up, fat when down`,
  }),
  job({
    key: 'u-series-parallel',
    on: '2026-04-14',
    type: 'electric guitar',
    client: 'Ewan Pretend',
    title: 'Four-conductor neck pickup on a mini switch, series or parallel',
    work: ['asked done: Series parallel switch for the neck', 'offered declined: Same for the bridge'],
    traces: [
      {
        subject: 'neck humbucker',
        conductors: 'yellow brown blue white bare',
        joint: {
          at: '26:05',
          title: 'Both ways on the mini switch',
          lines: [
            'hot: blue → switch, upper left lug',
            'joined: yellow + brown → switch, centre lugs',
            'ground: white + bare → switch, lower right lug',
          ],
        },
      },
    ],
    film: `
      0:10 intake: Mud at the neck
      3:10 = resistance 6.74 kΩ coil [blue-brown]
      3:45 = resistance 6.82 kΩ coil [yellow-white]
      24:00 work: Mini toggle wired
      29:10 = resistance 13.6 kΩ series
      29:40 = resistance 3.39 kΩ parallel
      31:00 result: Clear now`,
  }),
  job({
    key: 'u-copper-cavity',
    on: '2024-11-26',
    type: 'electric guitar',
    client: 'Magda Emptyname',
    title: 'Hums unless you touch the strings',
    work: ['asked done: Get rid of the hum', 'found done: Cavity bare, no screen at all'],
    parts: ['fitted stock: Copper foil'],
    film: `
      0:12 intake: Hum that goes when I touch metal
      1:00 = resistance 0.4 Ω bridge to sleeve
      1:20 - string ground is good so it is just open to the room
      4:00 work: Lined with foil, seams soldered
      15:00 = resistance 0.3 Ω foil to sleeve
      17:30 result: Hum way down`,
  }),
  job({
    key: 'u-full-shim',
    on: '2026-10-08',
    type: 'electric guitar',
    client: 'Jory Standin',
    title: 'Saddles on the floor and still too high',
    work: ['asked done: Bring the action down', 'offered done: Check relief'],
    parts: ['fitted stock: Tapered maple shim, half a degree'],
    film: `
      0:10 intake: Grub screws bottomed out
      0:50 = string-height 2.4 mm sixth at twelve
      1:10 = relief 0.15 mm first to seventeenth
      2:30 diagnosis: Neck sits too shallow
      5:00 work: Tapered shim in the pocket
      11:20 = string-height 1.7 mm sixth at twelve
      12:00 result: Saddles have room both ways`,
  }),
  job({
    key: 'u-head-off',
    on: '2023-05-23',
    type: 'electric guitar',
    client: 'Perpetua Blank',
    title: 'Head came off in a fall from its stand',
    features: 'set mahogany neck, angled head',
    work: ['asked done: Put it back together', 'offered declined: Spray over the joint // wants to see it'],
    film: `
      0:10 intake: Two pieces in a bag
      1:30 - long fibres, good, it wants to go back by itself
      3:00 work: Dry run with cauls
      6:00 work: Aliphatic glue, two clamps, a day under pressure
      14:00 work: Two splines let in across the joint
      22:00 result: Strung to pitch for a week, has not moved`,
  }),
];
