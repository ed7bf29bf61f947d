import { job } from './form';

/** Electric guitars and a lap steel of the second blind set. */
export const secondElectricJobs = [
  job({
    key: 's-jack-bent',
    on: '2023-10-12',
    type: 'electric guitar',
    client: 'Percy Sampleton',
    title: 'Cuts out whenever the lead is wiggled',
    work: ['asked done: Stop it cutting out'],
    film: `
      0:12 intake: Goes dead if he steps on the cable
      0:20 - wiggle it... gone. wiggle it... back
      1:40 diagnosis: Tip spring of the socket has lost its bend
      1:50 - that tongue should press on the plug and it's just flopping about
      3:10 work: Spring bent in again with pliers, nut tightened
      5:00 result: Swung the lead about, not a peep`,
  }),
  job({
    key: 's-jack-new',
    on: '2026-05-06',
    type: 'electric guitar',
    client: 'Tilda Mockman',
    title: 'Output socket cracked, new one',
    work: ['asked done: Output socket'],
    parts: ['fitted stock: Open-frame mono jack', 'removed returned: Plastic box jack, cracked'],
    film: `
      0:10 intake: Plug falls out on stage
      0:18 - plastic housing's in two halves, look
      2:00 work: Open-frame jack in, long hot wire kept
      2:40 - always the metal kind for me, I've had it with the boxes
      4:30 result: Plug clicks home and stays`,
  }),
  job({
    key: 's-pot-spray',
    on: '2024-11-19',
    type: 'electric guitar',
    client: 'Wenzel Makebelieve',
    title: 'Crackly volume, cleaned',
    work: ['asked done: Crackle when turning the volume'],
    film: `
      0:08 intake: Crackles like frying bacon
      0:30 - only while it's moving, so it's dirt on the track
      1:20 work: Contact cleaner through the slot, thirty turns
      2:50 - and that is quiet now, no need for a new one
      3:05 result: Silent sweep, told him it may come back`,
  }),
  job({
    key: 's-pot-swap',
    on: '2026-03-17',
    type: 'electric guitar',
    client: 'Orla Pretend',
    title: 'Volume pot worn through',
    work: ['asked done: Volume jumps from nothing to full'],
    parts: ['fitted stock: Volume pot, 250k audio taper', 'removed kept: Old pot with worn track'],
    film: `
      0:10 intake: Nothing nothing nothing then everything
      1:02 measurement: Old pot across the outer lugs
      1:05 = resistance 212 kΩ old volume pot
      1:20 - cleaner did nothing, the carbon's gone in one spot
      3:00 work: New pot soldered in, ground on the back
      3:20 - new pod sauderd in, and a bit more for the back of it
      4:15 = resistance 246 kΩ new volume pot
      6:00 result: Smooth all the way`,
  }),
  job({
    key: 's-selector',
    on: '2025-06-03',
    type: 'electric guitar',
    client: 'Bram Fakename',
    title: 'Five-way switch, second position dead',
    work: ['asked done: Second position silent', 'offered declined: New switch // wants the original kept'],
    film: `
      0:15 intake: No sound between bridge and middle
      1:10 diagnosis: One wiper does not reach its contact
      1:18 - green crud all over the wafer, somebody lives by the sea
      3:30 work: Wafer cleaned, wiper arm bent back
      5:10 result: All five sound`,
  }),
  job({
    key: 's-hum4-spring',
    on: '2026-04-14',
    type: 'electric guitar',
    client: 'Luned Placeholder',
    title: 'Unmarked bridge humbucker, four conductors',
    work: ['asked done: Fit the humbucker she found in a drawer'],
    parts: ['fitted client: Bridge humbucker // maker unknown'],
    traces: [
      {
        subject: 'bridge humbucker',
        conductors: 'brown yellow blue white shield',
        joint: {
          at: '14:20',
          title: 'Series, hum cancelling',
          lines: [
            'hot: brown → switch lug',
            'joined: yellow + white (measured)',
            'ground: blue + shield → back of the volume pot',
          ],
        },
      },
    ],
    film: `
      0:20 intake: Four wires and a braid, no idea which is which
      2:00 measurement: Hunting the coils
      2:06 = resistance 4.11 kΩ bridge humbucker [brown-yellow]
      2:20 - brown to yellow four point one one, there's a coil
      2:40 = resistance 4.24 kΩ bridge humbucker [blue-white]
      3:00 = resistance open kΩ bridge humbucker [brown-blue]
      5:10 diagnosis: Screwdriver on the slugs, needle kicks up
      5:22 - red lead on brown, kicks positive, so brown's the start of the slugs
      14:15 work: Yellow to white, tape on
      16:00 = resistance 8.34 kΩ bridge humbucker, at the jack
      16:10 result: Adds up`,
  }),
  job({
    key: 's-hum4-autumn',
    on: '2025-10-08',
    type: 'electric guitar',
    client: 'Casimir Dummy',
    title: 'Neck humbucker traced and put in parallel',
    work: ['asked done: Brighter neck position'],
    traces: [
      {
        subject: 'neck humbucker',
        conductors: 'orange grey violet white shield',
        joint: {
          at: '11:00',
          title: 'Parallel',
          lines: [
            'hot: orange + violet → selector (measured)',
            'ground: grey + white + shield → volume pot casing (assumed)',
          ],
        },
      },
    ],
    film: `
      0:12 intake: Too woolly at the neck
      1:40 measurement: Four leads, meter on each two
      1:42 - right, hum bucker out, four leads
      1:44 = resistance 3.82 kΩ neck humbucker [orange-grey]
      2:02 = resistance 3.79 kΩ neck humbucker [violet-white]
      2:30 - orange grey one coil, violet white the other
      3:10 - I'm only guessing the phase of violet, same as the last one I had
      11:05 work: Orange with violet, grey with white
      13:00 = resistance 1.91 kΩ neck humbucker, both coils
      13:08 result: Clear and still no hum`,
  }),
  job({
    key: 's-hum3-split',
    on: '2024-05-22',
    type: 'electric guitar',
    client: 'Tilda Mockman',
    title: 'Coil split on a pull knob',
    work: ['asked done: Single-coil sound on the bridge pickup'],
    parts: ['fitted stock: Push-pull tone pot'],
    traces: [
      {
        subject: 'bridge pickup',
        conductors: 'pink grey black shield',
        joint: {
          at: '9:00',
          title: 'Split to the screw coil',
          lines: ['hot: pink → switch', 'joined: grey → push-pull lug', 'ground: black + shield'],
        },
      },
    ],
    film: `
      0:10 intake: Wants it to go thin when she pulls the knob
      2:10 = resistance 4.6 kΩ bridge pickup, first half [pink-grey]
      2:24 = resistance 4.5 kΩ bridge pickup, second half [grey-black]
      2:40 - grey's the middle, that's the tap
      8:50 work: Grey to the pull switch, shorts one half to ground
      12:00 result: Thin when up, fat when down`,
  }),
  job({
    key: 's-phase',
    on: '2025-02-11',
    type: 'electric guitar',
    client: 'Ignace Noname',
    title: 'Middle position hollow and quiet',
    work: ['asked done: Both pickups together sound like a telephone'],
    film: `
      0:15 intake: Either alone is fine, both is nasal
      1:30 diagnosis: Out of phase
      1:38 - tapped both with the screwdriver, one kicks up and one kicks down
      3:40 work: Leads of the neck pickup swapped, cover given its own ground
      3:50 - black to hot, white to ground now, and a jumper for the cover
      6:20 result: Full sound in the middle`,
  }),
  job({
    key: 's-frets-level',
    on: '2023-06-20',
    type: 'electric guitar',
    client: 'Agathe Whatsit',
    title: 'Choking bends above the twelfth',
    work: ['asked done: Notes die when bent', 'found declined: Refret // costs more than the guitar'],
    film: `
      0:20 intake: Bend up at the fifteenth and it dies
      1:00 measurement: Fret rocker finds three high ones
      1:10 = fret-height 0.94 mm 14th fret
      1:16 = fret-height 1.06 mm 15th fret
      4:00 work: Levelled the tongue, crowned, polished
      4:30 - marker pen, beam, marker pen, beam, twenty minutes of this
      14:00 result: Two-tone bends ring out`,
  }),
  job({
    key: 's-fret-sprung',
    on: '2025-09-30',
    type: 'electric guitar',
    client: 'Percy Sampleton',
    title: 'One fret lifting at the treble side',
    work: ['asked done: High E buzzes at the seventh only'],
    film: `
      0:14 intake: One note, one string
      0:50 diagnosis: Eighth fret has sprung out of its slot
      0:58 - you can slide a bit of paper under it
      2:30 work: Thin glue wicked in, clamped with a radius block
      5:40 result: Clean on the seventh`,
  }),
  job({
    key: 's-nut-deep',
    on: '2024-08-14',
    type: 'electric guitar',
    client: 'Fedor Blank',
    title: 'Open D rattles, nut slot too deep',
    work: ['asked done: Open string rattle'],
    film: `
      0:10 intake: Fretted it's fine, open it rattles
      0:44 = nut-slot-depth 0.2 mm D string, over the first fret
      0:50 - that's on the wire, somebody went mad with a file
      1:40 work: Slot filled with bone dust and thin glue, recut
      6:10 = nut-slot-depth 0.5 mm D string, over the first fret
      6:20 result: Open D rings`,
  }),
  job({
    key: 's-nut-stick',
    on: '2026-01-21',
    type: 'electric guitar',
    client: 'Lotte Anybody',
    title: 'G will not stay in tune',
    work: ['asked done: G goes sharp after every bend', 'offered done: Graphite in all slots'],
    film: `
      0:12 intake: Tuners replaced by the last bloke, no better
      1:05 diagnosis: String sticks in the nut
      1:12 - hear it? ping. it's not the tuner, it never is
      2:20 work: G slot widened and eased toward the post
      4:00 result: Bends and comes home`,
  }),
  job({
    key: 's-vibrato',
    on: '2024-03-27',
    type: 'electric guitar',
    client: 'Casimir Dummy',
    title: 'Floating bridge tipped right forward',
    work: ['asked done: New gauge of strings, bridge leans'],
    parts: ['fitted stock: One more spring in the back'],
    film: `
      0:10 intake: Went from nines to tens and now look
      1:10 work: Fourth spring, claw in two turns
      1:30 - tune, claw, tune, claw, it goes on
      7:00 = string-height 1.7 mm low E, 12th fret
      7:20 result: Sits level`,
  }),
  job({
    key: 's-rod-nut',
    on: '2023-11-28',
    type: 'electric guitar',
    client: 'Agathe Whatsit',
    title: 'Rod nut rounded off',
    work: ['asked done: Straighten the neck', 'found done: Replace rounded rod nut'],
    parts: ['fitted stock: Brass adjuster nut'],
    film: `
      0:15 intake: Strings miles up, key just spins
      0:50 = relief 0.65 mm neck
      1:20 diagnosis: Hex is chewed round
      1:28 - truss rot itself is fine, it's only the nut
      3:00 work: Slotted it with a saw, backed it off, new nut
      8:30 = relief 0.2 mm neck
      8:40 result: Neck moves again`,
  }),
  job({
    key: 's-head-wine',
    on: '2025-12-09',
    type: 'electric guitar',
    client: 'Rufus Stand-In',
    title: 'Headstock snapped, second time',
    work: ['asked done: Glue the headstock back'],
    film: `
      0:10 intake: Fell off the stand at the office party
      0:35 diagnosis: Old glue line let go, bad joint
      0:44 - somebody used wood filler, honestly
      3:00 work: Cleaned out, epoxy, two maple splines let in
      3:30 - splines go across the break or it'll be back
      22:00 result: Strung up overnight, no creep`,
  }),
  job({
    key: 's-head-clean',
    on: '2023-03-15',
    type: 'electric guitar',
    client: 'Wenzel Makebelieve',
    title: 'Fresh headstock break',
    work: ['asked done: Glue the headstock', 'offered declined: Touch up the lacquer // likes the scar'],
    film: `
      0:10 intake: Fresh break, all the splinters there
      1:30 work: Hot hide glue, inner tube and clamps
      1:50 - it closes like a book, you hardly see it
      12:00 result: Held at pitch for three days`,
  }),
  job({
    key: 's-lap-hum',
    on: '2025-03-04',
    type: 'lap steel',
    client: 'Ignace Noname',
    title: 'Lap steel hums until the strings are touched',
    work: ['asked done: Get rid of the hum'],
    film: `
      0:10 intake: Quiet with the bar on, hums with hands off
      1:00 = resistance open Ω bridge plate to socket sleeve
      1:10 diagnosis: Ground wire to the bridge plate was never there
      1:16 - no wire at all. none. just an empty hole
      2:30 work: Wire run from the plate to the sleeve
      3:20 = resistance 0.3 Ω bridge plate to socket sleeve
      3:30 result: Quiet`,
  }),
];
