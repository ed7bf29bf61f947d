import { job } from './form';

/**
 * Jobs of another repairer: telegram titles, long marker names, inches, few but long spoken lines.
 * Whoever writes rules of the archive leaves the blind set unread, or it shows nothing.
 */
export const blindJobs = [
  job({
    key: 'b-ground-buzz',
    on: '2024-07-15',
    type: 'electric guitar',
    client: 'Gilbert Sketch',
    title: 'EG – buzz, drops when hand on strings',
    film: `
      0:20 intake: It buzzes into every amp in the shop until I hold the strings
      0:40 - fairly sure we've lost the string ground on this one, so the cover comes off first and we look at the claw
      2:30 diagnosis: Wire had let go of the spring claw, cold joint
      4:10 work: Reflowed the claw joint with the big iron
      4:50 - you need heat here, a little iron just makes another cold joint and then it comes back to me in a month
      6:00 result: Dead quiet now
      6:05 = resistance 0.2 Ω claw to sleeve`,
  }),
  job({
    key: 'b-ground-buzz-later',
    on: '2026-01-12',
    type: 'electric guitar',
    client: 'Zelda Draft',
    title: 'EG – buzz again',
    film: `
      0:15 intake: Single coil buzz that follows the dimmer in her room
      1:40 - it's her lights, not her guitar, I can make it better but a dimmer is a dimmer
      3:00 work: Conductive paint, two coats, and a lug tied to the pot shells
      9:00 result: Down to where you only hear it between songs`,
  }),
  job({
    key: 'b-hum4',
    on: '2025-06-09',
    filmed: '2025-06-11',
    type: 'electric guitar',
    client: 'Gilbert Sketch',
    title: 'EG – HB 4-cond, no chart',
    traces: [
      {
        subject: 'bridge HB',
        conductors: 'red white green black',
        joint: {
          at: '9:30',
          title: 'Series with split on a mini toggle',
          lines: [
            'hot: black → switch',
            'joined: white + red → mini toggle',
            'ground: green + shield → pot shell',
          ],
        },
      },
    ],
    film: `
      0:25 intake: Humbucker out of a parts bin with four leads and a drain
      2:00 measurement: Ohmed out the leads two at a time
      2:04 = resistance 4.55 kΩ bridge HB [black-white]
      2:20 = resistance 4.61 kΩ bridge HB [red-green]
      2:30 - so black with white and red with green, and the drain goes nowhere but the baseplate
      5:00 measurement: Which end is the start, by pulling a steel bar off the poles
      9:20 work: Center tap up to the toggle
      12:00 result: Nine point one and splits like it should
      12:04 = resistance 9.14 kΩ bridge HB`,
  }),
  job({
    key: 'b-hum4-early',
    on: '2023-06-19',
    type: 'loose pickup',
    client: 'Amos Cipher',
    title: 'PU – 4-cond, identify',
    traces: [{ subject: 'unmarked HB', conductors: 'red white green black' }],
    film: `
      0:20 intake: Unmarked, wax all over, wants to know what he has
      1:30 measurement: Resistance lead to lead
      1:34 = resistance 3.95 kΩ unmarked HB [red-black]
      1:50 = resistance 3.97 kΩ unmarked HB [white-green]
      3:20 - not the order I'd have bet on, which is why I don't bet
      6:00 result: Tagged and bagged with the drawing`,
  }),
  job({
    key: 'b-volume-noise',
    on: '2024-02-19',
    type: 'electric guitar',
    client: 'Zelda Draft',
    title: 'EG – vol noisy on turn',
    parts: ['fitted stock: 250k pot, solid shaft', 'removed returned: worn 250k pot'],
    film: `
      0:15 intake: Static whenever you roll the volume
      1:20 - I cleaned it last year, so this time it's a new one and we're done with it
      4:00 work: New 250k in, wires moved across one by one
      4:05 = resistance 247 kΩ volume
      6:00 result: No static`,
  }),
  job({
    key: 'b-action-64',
    on: '2025-03-10',
    type: 'electric guitar',
    client: 'Ferris Stub',
    title: 'EG – setup, strings too far off',
    film: `
      0:20 measurement: Coming in at seven sixty-fourths on the bass side
      0:24 = string-height 7 64ths low E, 12th fret
      0:40 = relief 14 thou neck
      2:00 - way up there, and fourteen thou of bow on top, so the rod first and then the bridge
      9:00 result: Four and three
      9:03 = string-height 4 64ths low E, 12th fret
      9:10 = string-height 3 64ths high E, 12th fret
      9:16 = relief 7 thou neck`,
  }),
  job({
    key: 'b-fretwork',
    on: '2023-10-16',
    type: 'electric guitar',
    client: 'Ferris Stub',
    title: 'EG – L&C, dead spots above 12',
    work: ['asked done: Level and crown', 'offered declined: Stainless frets'],
    film: `
      0:20 intake: Bends die out past the octave
      1:40 diagnosis: Tongue of the neck kicks up
      5:00 work: Took fall-away into the last eight frets with the leveling bar
      5:30 - a ski jump, we call that, you take the jump down and leave the rest of the hill alone
      26:00 result: Bends ring out`,
  }),
  job({
    key: 'b-bass-relief',
    on: '2024-09-30',
    type: 'bass guitar',
    client: 'Amos Cipher',
    title: 'BG – clank on E',
    film: `
      0:15 = relief 2 thou neck
      0:25 - two thou is a board, a bass needs a little smile in the neck
      2:00 work: Loosened the rod a half turn for some bow
      6:00 result: Clank gone, low E blooms
      6:04 = relief 12 thou neck
      6:12 = string-height 6 64ths low E, 12th fret`,
  }),
  job({
    key: 'b-bass-battery',
    on: '2025-11-03',
    type: 'bass guitar',
    client: 'Lottie Dashed',
    title: 'BG – eats batteries',
    film: `
      0:15 intake: Nine volt lasts her three days
      1:00 measurement: Draw with nothing plugged in
      1:04 = current 1.9 mA battery lead
      1:20 - should be zero when the cord is out, it's nearly two milliamps around the clock
      3:00 diagnosis: Ring contact bent against the sleeve
      4:00 work: Bent it away and sleeved it
      5:00 result: Zero with the cord out`,
  }),
  job({
    key: 'b-acoustic-bridge',
    on: '2024-07-08',
    type: 'acoustic guitar',
    client: 'Perrin Margin',
    title: 'AG – bridge lifting',
    film: `
      0:20 intake: Back edge has opened by the width of a pick
      3:00 work: Heated, lifted, cleaned both gluing faces
      3:30 - I go in from the treble wing, that's where it had already given up
      12:00 work: Glued with fish glue and a vacuum clamp
      20:00 result: Tight to the light`,
  }),
  job({
    key: 'b-acoustic-bridge-2',
    on: '2025-12-29',
    type: 'acoustic guitar',
    client: 'Lottie Dashed',
    title: 'AG – bridge came off completely',
    film: `
      0:20 intake: Came in with the bridge in an envelope
      2:00 diagnosis: Heated living room, glue line starved
      5:00 work: Fresh hide glue, four clamps
      11:00 result: Stays`,
  }),
  job({
    key: 'b-acoustic-dry',
    on: '2026-02-02',
    type: 'acoustic guitar',
    client: 'Perrin Margin',
    title: 'AG – top sunk, sharp fret ends',
    film: `
      0:15 = humidity 22 %RH inside the case
      0:30 - twenty two, you can feel the frets with your eyes closed
      2:00 work: Ten days with wet sponges, then dressed the fret ends
      9:00 result: Top has come back up
      9:04 = humidity 46 %RH inside the case`,
  }),
  job({
    key: 'b-acoustic-saddle',
    on: '2023-05-22',
    type: 'acoustic guitar',
    client: 'Gilbert Sketch',
    title: 'AG – new saddle, plays sharp up high',
    parts: ['fitted stock: compensated bone saddle'],
    film: `
      0:20 measurement: Octave against harmonic
      0:24 = intonation 16 cents B string
      3:00 work: Filed the break point of each string further back
      9:00 result: Close enough for a campfire and for a studio
      9:04 = intonation 2 cents B string`,
  }),
  job({
    key: 'b-classical-crack',
    on: '2024-01-29',
    type: 'classical guitar',
    client: 'Zelda Draft',
    title: 'CG – back seam open',
    film: `
      0:15 intake: Long gap down the middle of the back
      2:00 work: Humidified until it met, then glue from outside, strip inside
      2:30 - patience is most of this one, the glue is the easy part
      8:00 result: Closed`,
  }),
  job({
    key: 'b-uke-tuner',
    on: '2026-06-15',
    type: 'ukulele',
    client: 'Lottie Dashed',
    title: 'UK – swap to geared tuners',
    parts: ['fitted client: four geared tuners', 'removed returned: four friction pegs'],
    film: `
      0:20 intake: She is tired of friction pegs
      2:00 work: Opened the holes to ten millimetres and pressed the bushings
      7:00 result: Four turns where it was half a turn`,
  }),
  job({
    key: 'b-mando-setup',
    on: '2025-04-21',
    type: 'mandolin',
    client: 'Amos Cipher',
    title: 'MN – setup',
    film: `
      0:15 = string-height 5 64ths G course, 12th fret
      1:30 - chops fine, but you need pliers to fret it
      3:00 work: Sanded the bridge saddle down
      6:00 result: Three sixty-fourths
      6:04 = string-height 3 64ths G course, 12th fret`,
  }),
  job({
    key: 'b-banjo-loose',
    on: '2023-08-28',
    type: 'banjo',
    client: 'Ferris Stub',
    title: 'BJ – no snap',
    film: `
      0:15 intake: Sounds like a cardboard box
      1:20 work: Snugged every bracket until the drum rang near a G
      1:50 - a little at a time and always the one opposite, or the rim goes out
      5:00 = pitch 390 Hz drum
      6:00 result: Snap is back`,
  }),
  job({
    key: 'b-violin-post',
    on: '2026-10-12',
    type: 'violin family',
    client: 'Perrin Margin',
    title: 'VN – thin tone, post check',
    film: `
      0:20 diagnosis: Post leans and touches with one edge only
      2:00 work: Recut both ends and stood it back up
      2:40 - I look through the end button hole with a light behind, both ends have to sit flat
      9:00 result: The G has a floor again`,
  }),
  job({
    key: 'b-viola-peg',
    on: '2024-11-18',
    type: 'violin family',
    client: 'Zelda Draft',
    title: 'VA – pegs stick',
    film: `
      0:20 intake: Swollen tight, she uses pliers
      1:30 work: Shaved a whisker off, peg compound
      4:00 result: Turns like a tap`,
  }),
  job({
    key: 'b-tube-bias',
    on: '2025-09-08',
    type: 'valve amplifier',
    client: 'Amos Cipher',
    title: 'TA – retube and bias',
    parts: ['fitted stock: matched quad of power tubes'],
    film: `
      0:20 - before anything, unplugged, drained, and I measure that it is drained; if you don't do this for a living, don't
      2:00 measurement: Cathode current per tube with the new quad
      2:04 = bias-current 52 mA V6
      2:12 = bias-current 50 mA V7
      2:20 = plate-voltage 470 V V6
      4:00 work: Turned down to seventy percent
      6:00 result: Thirty six apiece
      6:04 = bias-current 36 mA V6`,
  }),
  job({
    key: 'b-tube-hum',
    on: '2024-04-15',
    type: 'valve amplifier',
    client: 'Gilbert Sketch',
    title: 'TA – hums at idle',
    film: `
      0:20 intake: Same hum on every channel and with nothing plugged in
      1:30 - hundred twenty hertz so we're after filters
      1:34 = pitch 120 Hz hum
      4:00 diagnosis: Main filters have lost most of their value
      4:04 = capacitance 9 µF filter capacitor
      9:00 work: Recapped the supply
      14:00 result: Ear against the grille to hear anything`,
  }),
  job({
    key: 'b-tube-ping',
    on: '2026-03-09',
    type: 'valve amplifier',
    client: 'Ferris Stub',
    title: 'TA – rings like a bell',
    film: `
      0:20 intake: Chassis taps come through the speaker
      1:20 diagnosis: Front-end tube is microphonic
      2:30 work: Replaced it with one from the tested box
      4:00 result: Tap all you like`,
  }),
  job({
    key: 'b-ss-dead',
    on: '2023-12-18',
    type: 'solid-state amplifier',
    client: 'Perrin Margin',
    title: 'SS – no output',
    film: `
      0:20 intake: Lights up, says nothing
      1:30 diagnosis: Effects loop contacts oxidized, signal stops there
      2:30 work: Cleaned the return jack
      3:30 - patch cord across send and return tells you in five seconds
      4:00 result: Loud`,
  }),
  job({
    key: 'b-ss-dc',
    on: '2026-08-10',
    type: 'solid-state amplifier',
    client: 'Lottie Dashed',
    title: 'SS – speaker pushed out',
    film: `
      0:20 measurement: Volts on the output with no signal
      0:24 = voltage -28 V output
      1:00 - that's a rail on the cone, disconnect it
      3:00 diagnosis: Lower output device blown
      9:00 work: Replaced the pair and the emitter resistors
      13:00 result: Offset back to nothing
      13:03 = voltage 8 mV output`,
  }),
  job({
    key: 'b-pedal-switch',
    on: '2025-01-20',
    type: 'effects pedal',
    client: 'Gilbert Sketch',
    title: 'FX – bypass flaky',
    film: `
      0:20 intake: Sometimes bypasses, sometimes just mutes
      1:30 work: Replaced the foot switch
      6:00 result: Bypasses every time`,
  }),
  job({
    key: 'b-pedal-noise',
    on: '2026-05-18',
    type: 'effects pedal',
    client: 'Zelda Draft',
    title: 'FX – whine with shared adapter',
    film: `
      0:20 intake: Whines as soon as the tuner is on the same supply
      1:30 - ground loop through the power lead, same as always
      2:30 work: Gave it an isolated output
      3:30 result: Whine gone`,
  }),
  job({
    key: 'b-rewind',
    on: '2024-05-13',
    type: 'loose pickup',
    client: 'Ferris Stub',
    title: 'PU – open, rewind',
    film: `
      0:15 = resistance open kΩ lead to lead
      1:00 - open, and green at the eyelets
      5:00 work: Rewound with 42 plain, seven thousand nine hundred turns
      20:00 = resistance 5.8 kΩ lead to lead
      25:00 work: Dipped in paraffin
      30:00 result: Back in business`,
  }),
  job({
    key: 'b-headstock',
    on: '2023-03-27',
    type: 'acoustic guitar',
    client: 'Amos Cipher',
    title: 'AG – headstock cracked behind nut',
    film: `
      0:20 intake: Case fell down the stairs with the guitar in it
      2:00 work: Opened the crack, glue all the way in, clamped overnight
      8:00 result: Solid, scar shows`,
  }),
  job({
    key: 'b-psaltery',
    on: '2025-08-04',
    type: 'other',
    client: 'Perrin Margin',
    title: 'OT – bowed psaltery, pins slip',
    film: `
      0:20 intake: Pins drop back as soon as you let go of the wrench
      2:00 work: Next size of pin in the worst nine holes
      9:00 result: Holds pitch overnight`,
  }),
  job({
    key: 'b-scroll-inlay',
    on: '2026-04-06',
    type: 'electric guitar',
    client: 'Lottie Dashed',
    title: 'EG – dot fell out',
    claims: [
      'year doubtful stated: early eighties // she was told so',
      'other (dots) likely implied: not the first set // glue under it',
    ],
    film: `
      0:15 intake: Pearl dot gone from the ninth fret
      1:30 work: Cut a new one, epoxy, leveled flush
      5:00 result: Can't tell which is new`,
  }),
];
