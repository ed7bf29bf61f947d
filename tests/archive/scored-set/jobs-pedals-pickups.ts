import { job } from './form';

/** Effects pedals and loose pickups. */
export const pedalAndPickupJobs = [
  job({
    key: 'pedal-dead',
    on: '2024-01-08',
    type: 'effects pedal',
    client: 'Arvid Generic',
    title: 'No light, no sound',
    film: `
      0:10 intake: Dead since the wrong adaptor
      1:00 - plus in the middle. every time
      1:40 diagnosis: Protection diode shorted
      1:43 = resistance 0.8 Ω protection diode
      3:20 work: Diode replaced
      4:30 measurement: Supply inside
      4:32 = voltage 8.9 V board supply
      5:20 result: Lives`,
  }),
  job({
    key: 'pedal-switch',
    on: '2025-03-17',
    type: 'effects pedal',
    client: 'Dorit Fictive',
    title: 'Has to be stamped on twice',
    parts: ['fitted stock: three-pole footswitch'],
    film: `
      0:10 intake: Footswitch works every other time
      1:20 work: New footswitch, nine little wires
      1:30 - photograph first. nine wires
      6:00 result: One stamp, one click`,
  }),
  job({
    key: 'pedal-fuzz-noise',
    on: '2026-05-25',
    type: 'effects pedal',
    client: 'Ulla Specimen',
    title: 'Radio comes through the fuzz',
    film: `
      0:12 intake: Picks up the local station
      1:00 - you can hear the news, listen
      2:30 work: Small cap across the input
      2:33 = capacitance 100 pF input capacitor
      4:00 result: No more weather report`,
  }),
  job({
    key: 'pedal-delay-clock',
    on: '2023-11-06',
    type: 'effects pedal',
    client: 'Mattis Lorem',
    title: 'Repeats get whiny',
    film: `
      0:12 intake: High whistle in the echo at long settings
      2:20 diagnosis: Clock bleeds into the signal
      2:26 = pitch 7200 Hz whistle
      5:00 work: Trimmed the clock null
      7:00 result: Whistle out of hearing`,
  }),
  job({
    key: 'pedal-wah-pot',
    on: '2024-06-24',
    type: 'effects pedal',
    client: 'Jorunn Placeholder',
    title: 'Wah scratchy in the sweep',
    parts: ['fitted stock: 100k rocker pot'],
    film: `
      0:10 intake: Scratches all the way down
      1:10 work: Cleaned the pot, no better
      3:00 work: New pot, gear set so it starts where it should
      3:10 = resistance 101 kΩ sweep pot
      5:40 result: Smooth sweep`,
  }),
  job({
    key: 'pedal-power-daisy',
    on: '2025-11-17',
    type: 'effects pedal',
    client: 'Quirin Beispiel',
    title: 'Whole board hums on one supply',
    film: `
      0:12 intake: Five pedals on a chain, all noisy
      1:20 diagnosis: Shared supply, one digital pedal whines into the rest
      2:40 work: Digital one on its own adaptor
      3:30 result: Clean
      3:33 = current 310 mA whole board`,
  }),
  job({
    key: 'pickup-rewind',
    on: '2025-05-05',
    filmed: '2025-05-19',
    type: 'loose pickup',
    client: 'Tamsin Blank',
    title: 'Dead single coil, to be wound again',
    work: ['asked done: Rewind to the old value'],
    traces: [
      {
        subject: 'single coil',
        conductors: 'white black',
        rows: ['poles'],
        joint: {
          at: '42:00',
          title: 'Alone, start to ground',
          lines: ['hot: white → finish of the coil', 'ground: black → start of the coil'],
        },
      },
    ],
    film: `
      0:12 measurement: Dead
      0:15 = resistance open kΩ single coil
      1:30 - green rust all along the start wire
      4:00 work: Old wire cut off, counted what I could
      9:00 work: Wound eight thousand two hundred turns
      9:20 - sneeze and it snaps
      31:00 measurement: After winding
      31:03 = resistance 6.05 kΩ single coil
      31:10 = inductance 2.3 H single coil
      36:00 work: Potted in wax at sixty five
      36:05 = temperature 65 °C wax
      44:00 result: Quiet when tapped`,
  }),
  job({
    key: 'pickup-microphonic',
    on: '2024-07-08',
    type: 'loose pickup',
    client: 'Corvin Testwell',
    title: 'Squealing pickup, wants dipping',
    film: `
      0:12 intake: Shrieks at volume, you can talk into it
      2:00 work: Into the wax bath, twenty minutes
      2:10 - bubbles, bubbles... when they stop it's done
      9:00 result: Tap it, nothing`,
  }),
  job({
    key: 'pickup-trace-mini',
    on: '2026-03-23',
    type: 'loose pickup',
    client: 'Ines Hypothet',
    title: 'Mini humbucker, five strands and no idea',
    traces: [
      {
        subject: 'mini humbucker',
        conductors: 'black white red green bare',
        joint: {
          at: '12:10',
          title: 'Series, humbucking',
          lines: ['hot: black → tip', 'joined: white + red', 'ground: green + bare → sleeve'],
        },
      },
    ],
    film: `
      0:12 intake: From a drawer, wants to know what it is
      1:30 measurement: Each strand against each
      1:33 = resistance 3.21 kΩ mini humbucker [black-white]
      1:52 = resistance 3.27 kΩ mini humbucker [red-green]
      2:10 - bare goes to the cover and nowhere else
      5:30 measurement: Compass over the poles
      5:40 - north on the screws, south on the other row
      12:00 work: Tacked together for a test lead
      14:00 result: Six and a half in all
      14:02 = resistance 6.48 kΩ mini humbucker`,
  }),
  job({
    key: 'pickup-trace-black-only',
    on: '2023-04-24',
    type: 'loose pickup',
    client: 'Knud Vague',
    title: 'Old humbucker, one core and braid',
    traces: [
      {
        subject: 'old humbucker',
        conductors: 'core braid',
        joint: {
          at: '6:20',
          title: 'As it is, braid to ground',
          lines: ['hot: core → tip', 'ground: braid → sleeve'],
        },
      },
    ],
    film: `
      0:12 intake: Braided lead, nothing to choose
      1:20 measurement: Core to braid
      1:22 = resistance 7.65 kΩ old humbucker
      1:40 = temperature 18 °C bench
      4:00 - cover's soldered on, I'm leaving it on
      6:10 work: Lead lengthened
      8:00 result: Good, and honest`,
    claims: ['year doubtful stated: 1960s // seller says so'],
  }),
  job({
    key: 'pickup-trace-open-coil',
    on: '2024-03-25',
    type: 'loose pickup',
    client: 'Ragna Nowhere',
    title: 'Humbucker with one winding gone',
    traces: [
      {
        subject: 'bridge humbucker',
        conductors: 'red white green black',
        joint: {
          at: '10:20',
          title: 'Series after the mend',
          lines: ['hot: red → tip', 'joined: green + white (implied)', 'ground: black + shield → sleeve'],
        },
      },
    ],
    film: `
      0:12 intake: Thin sound, half of it missing
      1:20 measurement: Pair by pair
      1:22 = resistance 4.3 kΩ bridge humbucker [red-green]
      1:40 = resistance open kΩ bridge humbucker [white-black]
      1:46 - second coil's gone
      4:00 diagnosis: Break under the tape at the start
      7:00 work: Found the end, soldered, taped
      11:00 result: Both there
      11:02 = resistance 4.25 kΩ bridge humbucker [white-black]`,
  }),
  job({
    key: 'pickup-magnet-swap',
    on: '2025-09-22',
    type: 'loose pickup',
    client: 'Hanno Exemplar',
    title: 'Softer magnet for a harsh bridge pickup',
    film: `
      0:12 intake: Too bright, wants it rounder
      2:00 work: Screws out, ceramic bar slid out, alnico in
      2:10 - mark which way is north before you pull it!
      6:00 result: Rounder
      6:03 = resistance 9.8 kΩ bridge pickup`,
  }),
  job({
    key: 'pickup-cover',
    on: '2026-08-24',
    type: 'loose pickup',
    client: 'Bo Filler',
    title: 'Cover rattles on a humbucker',
    film: `
      0:10 intake: Cover came unsoldered on one side
      1:20 work: Wax between, both corners soldered
      4:00 result: Still when shaken`,
  }),
];
