import { job } from './form';

/** Electric guitars. */
export const electricGuitarJobs = [
  job({
    key: 'four-core-spring-24',
    on: '2024-04-08',
    filmed: '2024-04-10',
    type: 'electric guitar',
    client: 'Wenda Plainly',
    title: 'Unknown humbucker, which lead is which',
    features: 'two humbuckers, one volume, three-way switch',
    work: ['asked done: Wire in the bridge pickup she bought second-hand', 'offered done: Clean the switch'],
    parts: ['fitted client: bridge humbucker with 4-conductor cable // maker not known'],
    traces: [
      {
        subject: 'bridge pickup',
        conductors: 'red white green black',
        joint: {
          at: '14:40',
          title: 'Series, both coils, humbucking',
          lines: [
            'hot: red → middle lug of the switch',
            'joined: white + green',
            'ground: black + shield → back of the volume pot',
          ],
        },
      },
    ],
    film: `
      0:12 intake: Second-hand bridge pickup with four bare ends
      0:20 - so she got this from a market, no paper with it, nothing on the back
      0:41 - four colours and a screen, could be anything really
      3:05 measurement: Pairing the four conductors with the ohmmeter
      3:10 - right, red to black, nothing. red to green... nothing
      3:31 - red to white, there we go, four point one two
      3:33 = resistance 4.12 kΩ bridge pickup slug coil [red-white]
      4:02 = resistance 4.06 kΩ bridge pickup screw coil [green-black]
      4:05 - and green black is the other one, four oh six
      6:10 measurement: Screwdriver on the poles to see which way it kicks
      6:18 - needle goes up, so red is plus, I'll write that down
      6:50 - no hang on, that was with the leads crossed. again.
      14:30 work: White and green together, red hot
      14:44 - soldering those two, bit of sleeve over it
      19:02 result: Total reads as it should // 8.17 against 8.18 predicted
      19:05 = resistance 8.17 kΩ bridge pickup, joined
      19:30 - lovely, hum drops when both are on`,
  }),
  job({
    key: 'four-core-autumn-24',
    on: '2024-10-14',
    type: 'electric guitar',
    client: 'Corvin Testwell',
    title: 'Neck humbucker swapped, coil split wanted',
    features: 'two humbuckers, push-pull tone',
    work: ['asked done: Coil split on the tone knob'],
    traces: [
      {
        subject: 'neck pickup',
        conductors: 'yellow blue orange grey',
        joint: {
          at: '11:20',
          title: 'Series, link to the push-pull',
          lines: [
            'hot: yellow → neck lug',
            'joined: blue + orange → push-pull',
            'ground: grey + shield → pot case',
          ],
        },
      },
    ],
    film: `
      0:15 intake: New neck pickup, four-conductor, colours I have not had before
      2:30 measurement: Finding the two windings
      2:34 - yellow and blue is one
      2:36 = resistance 3.88 kΩ neck pickup [yellow-blue]
      2:58 = resistance 3.91 kΩ neck pickup [orange-grey]
      5:40 - which one's the start, I never remember, do the screwdriver thing
      11:10 work: Link on the push-pull so it splits
      11:32 - pull it up and the inside coil stays
      15:00 result: Splits clean, no pop`,
  }),
  job({
    key: 'four-core-spring-26',
    on: '2026-04-20',
    filmed: '2026-04-22',
    type: 'electric guitar',
    client: 'Marla Sampleton',
    title: 'Rewire with two traced pickups',
    features: 'two humbuckers, two volumes, two tones',
    work: ['asked done: Complete rewire', 'offered not done: Shield the cavities // ran out of copper foil'],
    traces: [
      {
        subject: 'neck pickup',
        conductors: 'red white green black',
        joint: {
          at: '16:05',
          title: 'Series, humbucking',
          lines: ['hot: green → volume input', 'joined: red + white', 'ground: black + shield → pot case'],
        },
      },
    ],
    film: `
      0:30 intake: Nest of wire in there, all coming out
      4:10 diagnosis: Colours do not follow the last one of this sort
      4:15 - same colours as the one I did two years back but don't trust that
      6:00 measurement: Traced the neck four-conductor
      6:03 = resistance 4.02 kΩ neck pickup [green-red]
      6:30 = resistance 4.08 kΩ neck pickup [white-black]
      6:41 - see, green goes with red here, so last time's notes would've been wrong
      8:20 measurement: Phase check with a bit of steel
      16:00 work: Joined red and white, sleeved
      21:15 result: 8.1 at the jack with everything up
      21:17 = resistance 8.09 kΩ neck pickup
      21:40 - beautiful. eight point oh nine`,
  }),
  job({
    key: 'hum-summer-23',
    on: '2023-07-03',
    type: 'electric guitar',
    client: 'Otto Dummer',
    title: 'Hums until the strings are touched',
    work: ['asked done: Find the hum'],
    film: `
      0:10 intake: Hums like a fridge, stops when you touch the bridge
      0:18 - okay listen to that. and hand on. gone.
      2:20 diagnosis: Ground wire to the bridge is off
      2:25 - there's meant to be a wire coming out under the stud and it isn't touching anything
      2:44 = resistance open kΩ bridge to jack sleeve
      5:05 work: New ground wire under the bridge stud
      7:30 result: Quiet, hand on or off
      7:32 = resistance 0.4 Ω bridge to jack sleeve`,
  }),
  job({
    key: 'hum-spring-25',
    on: '2025-04-02',
    type: 'electric guitar',
    client: 'Pella Mockford',
    title: 'Buzzing noise through the amp',
    film: `
      0:20 intake: Noisy on her own amp and on mine
      0:26 - it's that mains buzz, worse near the lamp
      3:00 diagnosis: No screening in the control cavity
      3:12 - bare wood in here. single coils and bare wood, there's your aerial
      8:40 work: Copper foil in all three cavities
      8:52 - press it into the corners, overlap, solder across the seams
      20:10 measurement: Foil to jack sleeve
      20:12 = resistance 0.3 Ω foil to sleeve
      24:00 result: Buzz down to almost nothing
      24:09 - you'll always get a bit with single coils, that's them`,
  }),
  job({
    key: 'hum-autumn-25',
    on: '2025-10-20',
    type: 'electric guitar',
    client: 'Bertil Notional',
    title: 'Hum after somebody else rewired it',
    film: `
      0:14 intake: Was quiet before the last person went in
      2:02 diagnosis: Ground loop, and hot and ground swapped at the jack
      2:10 - oh. oh dear. tip's on the sleeve
      2:22 - and there's two earth wires going round in a ring here, that's your loop
      6:10 work: Swapped the jack wires, cut one of the two earths
      8:00 result: Hum gone
      8:05 - quiet as a mouse`,
  }),
  job({
    key: 'crackle-vol-24',
    on: '2024-01-22',
    type: 'electric guitar',
    client: 'Ines Hypothet',
    title: 'Volume crackles',
    work: ['asked done: Volume pot crackles, clean or replace'],
    parts: ['removed returned: 500k volume pot', 'fitted stock: 500k audio pot'],
    film: `
      0:08 intake: Crackle every time the volume is turned
      0:12 - hear that? like frying bacon
      1:50 work: Contact cleaner into the pot, turned it fifty times
      2:40 - still there. okay. it's worn, it's coming out
      5:10 measurement: New pot before it goes in
      5:12 = resistance 498 kΩ volume pot
      9:00 result: Smooth from nought to ten`,
  }),
  job({
    key: 'scratchy-tone-26',
    on: '2026-02-09',
    type: 'electric guitar',
    client: 'Wenda Plainly',
    title: 'Scratchy tone potentiometer',
    film: `
      0:10 intake: Tone control scratchy, and it does very little
      1:30 diagnosis: Capacitor leg broken off at the lug
      1:36 - that explains it does nothing then
      2:50 measurement: Cap out of circuit
      2:52 = capacitance 21.6 nF tone capacitor
      4:20 work: Cap back on, potentiometer flushed
      6:30 result: Works over the whole turn, silent`,
  }),
  job({
    key: 'no-sound-bridge-pickup',
    on: '2025-01-13',
    type: 'electric guitar',
    client: 'Fenna Mustermann',
    title: 'Bridge position dead',
    film: `
      0:10 intake: Nothing at all from the bridge pickup
      1:00 - neck fine. both, quieter. bridge, silence
      2:15 measurement: Bridge pickup reads open
      2:17 = resistance open kΩ bridge pickup
      2:24 - open. over range. let's hope it's the lead and not the coil
      4:40 diagnosis: Coil wire broken at the eyelet
      4:46 - under the glass you can see it, hair thin, corroded right at the solder
      9:30 work: Unwound one turn and resoldered to the eyelet
      12:20 result: Alive again
      12:22 = resistance 6.31 kΩ bridge pickup`,
  }),
  job({
    key: 'setup-low-action',
    on: '2024-06-17',
    type: 'electric guitar',
    client: 'Hanno Exemplar',
    title: 'Set-up, wants it low',
    work: [
      'asked done: Set-up with low action, new strings 10-46',
      'offered declined: Fret level // next year',
    ],
    film: `
      0:30 measurement: As it came in
      0:34 = string-height 2.6 mm low E, 12th fret
      0:40 = string-height 2.1 mm high E, 12th fret
      0:52 = relief 0.35 mm neck
      0:58 - that's high. no wonder he's fighting it
      5:00 work: Quarter turn on the rod
      9:10 work: Saddles down
      15:00 result: Plays clean at one point six
      15:04 = string-height 1.6 mm low E, 12th fret
      15:09 = string-height 1.3 mm high E, 12th fret
      15:15 = relief 0.18 mm neck
      15:30 - any lower and the fourteenth frets out, I've told him`,
  }),
  job({
    key: 'setup-slide',
    on: '2025-08-11',
    type: 'electric guitar',
    client: 'Jorunn Placeholder',
    title: 'Raise it for bottleneck playing',
    work: ['asked done: High action for slide, heavy strings'],
    film: `
      0:20 intake: Wants it up so the glass never knocks the frets
      3:00 work: Extension over the nut
      3:08 - little steel riser clipped over, comes off again
      6:30 result: Three and a half at the twelfth
      6:33 = string-height 3.5 mm low E, 12th fret`,
  }),
  job({
    key: 'fret-buzz-level',
    on: '2024-11-04',
    type: 'electric guitar',
    client: 'Silas Proforma',
    title: 'Rattles on the third and fifth frets',
    work: ['asked done: Fret dress'],
    film: `
      0:15 intake: Choking and rattling low down on the neck
      2:10 diagnosis: Two high frets // five and seven stand proud, rocker shows it
      2:16 - rock the little straight edge, tick tick, that's a high one
      3:40 measurement: Fret heights
      3:42 = fret-height 1.05 mm 5th fret
      3:55 = fret-height 0.92 mm 6th fret
      8:00 work: Levelled with the long beam, crowned, polished
      8:20 - dust mask on for this
      31:00 result: Every note clean`,
  }),
  job({
    key: 'refret-worn',
    on: '2023-02-20',
    filmed: '2023-03-06',
    type: 'electric guitar',
    client: 'Ulla Specimen',
    title: 'Worn out frets, the lot to be replaced',
    work: ['asked done: Full refret with tall wire', 'offered done: New nut while it is off'],
    parts: ['fitted stock: 22 pieces of tall fret wire', 'fitted stock: bone nut blank'],
    film: `
      0:20 intake: Grooves under the plain strings right up to the ninth
      1:10 = fret-height 0.55 mm 2nd fret
      5:30 work: Pulled the old wire with heat
      5:44 - iron on the fret, wait for the little sizzle, nippers under
      18:00 work: Radius block over the board
      26:00 work: Pressed the new ones in
      44:00 work: Ends bevelled and crowned
      58:20 result: Tall and shiny
      58:24 = fret-height 1.35 mm 2nd fret`,
  }),
  job({
    key: 'nut-ping',
    on: '2025-05-26',
    type: 'electric guitar',
    client: 'Quirin Beispiel',
    title: 'G string pings and goes sharp when tuning',
    film: `
      0:10 intake: Goes ping, jumps past the note
      1:40 diagnosis: G slot pinches
      1:46 - the string sits in the nut like it's in a vice
      3:00 work: Widened the slot with the gauged file, pencil lead in it
      3:30 - two strokes, look, two strokes, look. you can't put it back
      5:40 measurement: Slot depth over the first fret
      5:42 = nut-slot-depth 0.45 mm G string, first fret
      7:00 result: Comes up to pitch without a jump`,
  }),
  job({
    key: 'trem-wont-return',
    on: '2026-06-01',
    type: 'electric guitar',
    client: 'Pella Mockford',
    title: 'Tremolo does not come back to pitch',
    film: `
      0:12 intake: Dives fine, comes back flat
      2:00 diagnosis: Knife edges blunt and one post leaning
      2:09 - run a nail along it, feel that burr
      6:00 work: Dressed the edges with a stone, re-seated the post bushing
      13:10 work: Spring claw evened up
      18:00 result: Back within two cents
      18:05 = intonation 2 cents G string after a dive`,
  }),
  job({
    key: 'intonation-saddles',
    on: '2023-09-18',
    type: 'electric guitar',
    client: 'Dorit Fictive',
    title: 'Chords sour up the neck',
    film: `
      0:20 intake: Open chords sweet, anything past the twelfth out of tune
      2:30 measurement: Twelfth fret against the harmonic
      2:33 = intonation 14 cents low E
      2:45 = intonation 9 cents A string
      2:51 - fourteen sharp, saddle has to go back a long way
      6:00 work: Saddles back, one turned round
      11:30 result: All within two cents
      11:33 = intonation 1 cents low E`,
  }),
  job({
    key: 'jack-loose',
    on: '2026-03-16',
    type: 'electric guitar',
    client: 'Lorenz Nemo',
    title: 'Cuts out when the cable moves',
    work: ['asked done: Output socket cuts out'],
    parts: ['fitted stock: mono output socket', 'removed kept: old output socket'],
    film: `
      0:10 intake: Wiggle the plug and the sound comes and goes
      1:20 diagnosis: Socket contact has lost its spring
      1:28 - you can see it doesn't grip the tip any more
      3:30 work: New socket, star washer behind so it can't turn
      5:50 result: Plug held tight, no dropouts`,
  }),
  job({
    key: 'switch-three-way',
    on: '2024-09-02',
    type: 'electric guitar',
    client: 'Hanno Exemplar',
    title: 'Selector cuts out in the middle',
    film: `
      0:15 intake: Middle position only works if you hold it
      1:50 measurement: Across the switch contacts
      1:52 = resistance 38 Ω selector switch, middle
      2:00 - thirty eight ohms, should be nothing
      3:10 work: Cleaned the leaves with a strip of card and contact cleaner
      5:00 result: Under half an ohm in all three
      5:03 = resistance 0.3 Ω selector switch, middle`,
  }),
  job({
    key: 'hot-bridge-pickup',
    on: '2023-11-13',
    type: 'electric guitar',
    client: 'Tamsin Blank',
    title: 'Louder bridge pickup fitted',
    traces: [
      {
        subject: 'new bridge pickup',
        conductors: 'core braid',
        rows: ['slug', 'screw'],
        joint: {
          at: '6:40',
          title: 'As it is, braid to the pot case',
          lines: ['hot: core → switch', 'ground: braid → pot case'],
        },
      },
    ],
    parts: ['fitted client: high output bridge humbucker', 'removed returned: stock bridge humbucker'],
    film: `
      0:20 measurement: Old one and new one on the meter
      0:24 = resistance 8.4 kΩ old bridge pickup
      0:40 = resistance 15.6 kΩ new bridge pickup
      0:45 - fifteen point six, that's a lot of wire
      1:10 = inductance 7.9 H new bridge pickup
      6:00 work: In it goes, height set
      6:10 = pickup-height 2.4 mm bridge, bass side
      9:00 result: Loud. Neck had to come up to match`,
  }),
  job({
    key: 'out-of-phase-pair',
    on: '2025-03-03',
    type: 'electric guitar',
    client: 'Corvin Testwell',
    title: 'Both pickups together sound thin',
    traces: [
      {
        subject: 'neck pickup',
        conductors: 'white black',
        rows: ['poles'],
        joint: {
          at: '6:25',
          title: 'Leads reversed to suit the bridge pickup',
          lines: ['hot: black → switch', 'ground: white → pot case'],
        },
      },
    ],
    film: `
      0:15 intake: Each good alone, together it goes nasal and weak
      1:40 diagnosis: The two are out of phase
      1:46 - classic. one's backwards
      3:10 measurement: Tapped the poles, kicks opposite ways
      6:20 work: Reversed the two leads of the neck pickup
      6:30 - has to be the one without the braided screen, else you get buzz
      8:40 result: Full again in the middle`,
  }),
  job({
    key: 'neck-8k1',
    on: '2023-05-08',
    type: 'electric guitar',
    client: 'Ines Hypothet',
    title: 'Values taken before selling',
    work: ['asked done: Measure everything and write it down'],
    claims: [
      'year likely stated: 1978 // the owner bought it new',
      'original part (pickups) likely implied: both original // solder untouched',
    ],
    film: `
      0:30 measurement: Pickups at the jack
      0:34 = resistance 8.12 kΩ neck pickup
      0:50 = resistance 8.31 kΩ bridge pickup
      1:20 - eight point one two neck, eight three one bridge
      2:10 measurement: Pots
      2:12 = resistance 287 kΩ neck volume pot
      2:25 = resistance 301 kΩ bridge volume pot
      4:00 result: All noted, solder never touched`,
  }),
  job({
    key: 'neck-6k-single',
    on: '2024-02-26',
    type: 'electric guitar',
    client: 'Silas Proforma',
    title: 'Neck single coil weak',
    film: `
      0:20 intake: Neck much quieter than the other two
      1:10 measurement: All three
      1:12 = resistance 5.9 kΩ neck pickup
      1:20 = resistance 6.1 kΩ middle pickup
      1:28 = resistance 6.4 kΩ bridge pickup
      1:35 - nothing wrong with those numbers
      3:00 diagnosis: Magnets weak, filings hardly hang on
      5:30 work: Magnets charged again between two big blocks
      8:00 result: As loud as its neighbours`,
  }),
  job({
    key: 'truss-rod-stuck',
    on: '2023-12-04',
    type: 'electric guitar',
    client: 'Bertil Notional',
    title: 'Neck bowed, rod will not turn',
    film: `
      0:20 measurement: Far too much bow
      0:22 = relief 0.9 mm neck
      1:30 diagnosis: Rod nut seized
      1:38 - I'm not forcing that. snap it and it's a new neck
      4:00 work: Penetrating oil overnight, then clamped straight over blocks
      9:00 work: Nut turned with the neck held straight
      14:00 result: Nearly flat
      14:03 = relief 0.2 mm neck`,
  }),
  job({
    key: 'broken-headstock-eg',
    on: '2025-11-10',
    type: 'electric guitar',
    client: 'Vreni Anyone',
    title: 'Headstock snapped in a fall',
    work: ['asked done: Glue the headstock back', 'offered declined: Refinish over the repair'],
    film: `
      0:10 intake: Fell off the stand, head hanging by the veneer
      0:16 - oh that's a clean one, actually, long grain
      2:30 work: Dry run with the clamps
      4:00 work: Hot hide glue worked in with a syringe
      4:20 - work fast, it gels while you look at it
      7:50 work: Clamped with a caul, left two days
      12:00 result: Line hardly to be felt`,
  }),
  job({
    key: 'tuner-slips',
    on: '2026-01-19',
    type: 'electric guitar',
    client: 'Otto Dummer',
    title: 'B string will not hold',
    parts: ['fitted stock: set of six machine heads'],
    film: `
      0:15 intake: Drifts flat within a song
      1:20 diagnosis: Worn gear in the machine head
      1:26 - feel the slop in that, quarter of a turn before anything happens
      4:10 work: New set of machines, holes reamed
      9:00 result: Stays put after an hour of bending`,
  }),
  job({
    key: 'strap-button',
    on: '2024-07-29',
    type: 'electric guitar',
    client: 'Lorenz Nemo',
    title: 'Strap button pulled out',
    work: ['asked done: Strap button tight again'],
    film: `
      0:10 intake: Screw just spins
      1:00 work: Hardwood plug glued in, drilled again
      1:15 - toothpicks would do but I like a proper plug
      4:10 result: Hangs on it with my whole weight`,
  }),
  job({
    key: 'treble-bleed',
    on: '2025-06-23',
    type: 'electric guitar',
    client: 'Dorit Fictive',
    title: 'Goes muddy when turned down',
    work: ['asked done: Keep the highs at low volume'],
    film: `
      0:20 intake: Turn it to five and the top end has gone
      2:00 work: Small cap and resistor across the volume pot
      2:10 = capacitance 680 pF bleed capacitor
      2:20 = resistance 150 kΩ bleed resistor
      2:30 - one leg on the input, the other on the wiper
      4:30 result: Bright all the way down`,
  }),
  job({
    key: 'wiring-no-ground-assumed',
    on: '2026-09-07',
    type: 'electric guitar',
    client: 'Marla Sampleton',
    title: 'Three single coils to a new harness',
    traces: [
      {
        subject: 'middle pickup',
        conductors: 'white black',
        rows: ['poles'],
        joint: {
          at: '10:05',
          title: 'Alone, reversed for the middle',
          lines: ['hot: white → middle lug (assumed)', 'ground: black → pot case (assumed)'],
        },
      },
    ],
    film: `
      0:25 intake: Loaded plate from another guitar
      3:00 measurement: Middle one only, others come next week
      3:03 = resistance 6.2 kΩ middle pickup (assumed)
      3:10 - I'm taking the seller's word for that, lead's too short to get at
      10:00 work: Soldered in as the label said
      12:00 result: Plays, polarity still to be proved`,
  }),
];
