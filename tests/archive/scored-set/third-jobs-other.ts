import { job } from './form';

/** Amplifiers, pedals and the rest of the third blind set. */
export const thirdOtherJobs = [
  job({
    key: 'u-cherry-red',
    on: '2025-07-15',
    type: 'valve amplifier',
    client: 'Clem Fabricated',
    title: 'One output valve goes cherry red',
    work: ['asked done: Valve goes red after ten minutes', 'offered done: Bias both'],
    parts: ['fitted stock: Two coupling capacitors 22 nF', 'fitted client: Matched pair of output valves'],
    film: `
      0:10 intake: Red on the left one
      0:30 - mains lead out and the reservoir drained and metered before a finger goes in
      2:10 = plate-voltage 452 V left output valve
      3:00 = voltage 6.2 V grid of the left valve, should be negative
      3:20 diagnosis: Coupling capacitor leaks
      6:00 work: Both coupling capacitors changed
      12:00 = bias-current 38 mA left output valve
      12:30 = bias-current 37 mA right output valve
      15:00 result: An hour on the dummy load, dark`,
  }),
  job({
    key: 'u-frying',
    on: '2026-08-18',
    type: 'valve amplifier',
    client: 'Ines Sampleson',
    title: 'Frying noise with nothing plugged in',
    work: ['asked done: Crackle at idle'],
    parts: ['fitted stock: 100k metal film resistor'],
    film: `
      0:10 intake: Like bacon
      1:10 - supply off, drained, meter says zero
      2:00 diagnosis: Plate resistor of the first stage, freeze spray tells
      3:30 = resistance 131 kΩ plate resistor, marked 100
      5:00 work: Metal film in its place
      7:20 = plate-voltage 178 V first stage
      9:00 result: Only a whisper of hiss`,
  }),
  job({
    key: 'u-tank-dead',
    on: '2023-12-05',
    type: 'valve amplifier',
    client: 'Ludo Blankname',
    title: 'Reverb went missing',
    work: ['asked done: Reverb'],
    film: `
      0:10 intake: Knob does nothing
      1:30 = resistance 8.0 Ω tank, driver side
      1:50 = resistance open Ω tank, far side
      2:10 diagnosis: Hair-thin wire off the recovery coil
      4:00 work: Resoldered under the loupe
      6:00 = resistance 196 Ω tank, far side
      8:00 result: Splash is back`,
  }),
  job({
    key: 'u-fuse-pops',
    on: '2024-08-13',
    type: 'solid-state amplifier',
    client: 'Vera Mockname',
    title: 'Pops its fuse at switch-on',
    work: ['asked done: Fuse goes every time'],
    parts: ['fitted stock: Complementary pair of power devices', 'fitted stock: Fuse, slow, 2 A'],
    film: `
      0:10 intake: Third fuse this week
      1:00 - lamp limiter in line, bulb lights full, so a dead short
      2:20 = resistance 0.6 Ω collector to emitter, right heat sink
      2:40 diagnosis: Both devices on the right sink shorted
      6:30 work: New pair with fresh mica and paste
      10:20 = voltage 12 mV offset at the speaker terminals
      12:00 result: Lamp dims, fuse holds`,
  }),
  job({
    key: 'u-wah-scratch',
    on: '2026-03-03',
    type: 'effects pedal',
    client: 'Arlo Sampleboy',
    title: 'Wah scratches at the toe',
    work: ['asked done: Scratchy wah'],
    parts: ['fitted stock: Wah pot 100k, geared'],
    film: `
      0:10 intake: Scratch scratch
      1:00 - cleaner helped for a day last time
      2:30 work: Pot swapped, rack set two teeth from the heel
      6:00 = resistance 98 kΩ new pot end to end
      7:30 result: Sweeps like butter`,
  }),
  job({
    key: 'u-delay-footswitch',
    on: '2024-01-23',
    type: 'effects pedal',
    client: 'Tilda Nullname',
    title: 'Delay: footswitch only catches every third press',
    work: ['asked done: Footswitch'],
    parts: ['fitted stock: Latching footswitch, two pole'],
    film: `
      0:10 intake: Step, step, step, on
      0:50 = resistance 210 Ω footswitch closed
      2:00 work: Footswitch changed, six lugs
      6:10 = resistance 0.1 Ω footswitch closed
      7:00 result: Catches every time`,
  }),
  job({
    key: 'u-concertina-drone',
    on: '2025-08-26',
    type: 'concertina',
    client: 'Amos Dreamt',
    title: 'Left-hand button stays down and drones',
    work: ['asked done: Drones on the draw'],
    film: `
      0:10 intake: Moans all the time
      1:30 diagnosis: Lever bushing swollen, button binds in its hole
      4:00 work: Felt bush eased, spring lifted a touch
      7:00 result: Pops up by itself`,
  }),
  job({
    key: 'u-clarinet-cork',
    on: '2026-05-26',
    type: 'clarinet',
    client: 'Renske Alias',
    title: 'Middle joint wobbles, new cork',
    work: ['asked done: Wobble in the middle'],
    parts: ['fitted stock: Sheet cork, 1.6 mm'],
    film: `
      0:10 intake: Wobbles while she plays
      1:10 work: Old cork scraped out
      3:00 work: Sheet cork bevelled, contact glue, sanded round
      8:00 = length 1.6 mm cork before sanding
      9:00 result: Firm twist, no gap`,
  }),
];
