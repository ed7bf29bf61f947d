import { job } from './form';

/** Valve and solid-state amplifiers and pedals of the second blind set. */
export const secondAmplifierJobs = [
  job({
    key: 's-amp-rattle',
    on: '2024-02-08',
    type: 'valve amplifier',
    client: 'Gideon Nemo',
    title: 'Combo rings like a bell on loud notes',
    work: ['asked done: Ringing'],
    parts: ['fitted stock: Preamp valve, first position'],
    film: `
      0:12 intake: A sort of glassy ring behind the note
      1:00 diagnosis: First preamp valve is microphonic
      1:08 - pencil on the glass, tink tink, out of the speaker
      2:00 work: Swapped for a quiet one, silicone ring on
      3:20 result: Tink test dull`,
  }),
  job({
    key: 's-amp-fuse',
    on: '2025-10-21',
    type: 'valve amplifier',
    client: 'Sunniva Nobody',
    title: 'Takes out its fuse as it warms up',
    work: ['asked done: Blows fuses'],
    parts: ['fitted stock: Matched pair of output valves', 'fitted stock: Screen resistor 470 ohm 5 W'],
    film: `
      0:10 intake: Three fuses gone, the fourth was foil, lovely
      0:40 - caps drained and checked before I put a hand in
      1:30 diagnosis: One output valve flashes over
      1:50 = resistance open Ω screen resistor
      4:00 work: New pair and the burnt screen resistor
      8:20 = plate-voltage 428 V output valves
      8:40 = bias-current 33 mA each output valve
      9:00 result: An hour flat out, fuse intact`,
  }),
  job({
    key: 's-amp-bias-hot',
    on: '2026-03-03',
    type: 'valve amplifier',
    client: 'Percy Sampleton',
    title: 'Red plates, set the bias',
    work: ['asked done: New output valves biased'],
    parts: ['fitted client: Pair of output valves'],
    film: `
      0:10 intake: He fitted new bottles himself and one glows
      1:00 = bias-current 58 mA left output valve
      1:06 = plate-voltage 452 V left output valve
      1:12 - fifty eight at four fifty two, cherry red, off off off
      3:00 work: Negative volts turned up
      5:00 = bias-current 36 mA left output valve
      5:10 = bias-current 35 mA right output valve
      5:30 result: Dark and happy`,
  }),
  job({
    key: 's-amp-bias-cold',
    on: '2023-05-10',
    type: 'valve amplifier',
    client: 'Rufus Stand-In',
    title: 'Harsh at low volume, biased cold',
    work: ['asked done: Sounds scratchy and thin'],
    film: `
      0:10 intake: Buzzy edge on soft notes
      0:50 = bias-current 14 mA left output valve
      0:58 - fourteen, it's asleep
      2:00 work: Trimmer up in little steps
      4:00 = bias-current 34 mA left output valve
      4:20 result: Notch gone from the trace on the scope`,
  }),
  job({
    key: 's-amp-caps',
    on: '2024-12-11',
    type: 'valve amplifier',
    client: 'Bram Fakename',
    title: 'Loud steady drone, recapped',
    work: ['asked done: Hums with every knob at zero'],
    parts: ['fitted stock: Three reservoir caps 47 µF 500 V'],
    film: `
      0:12 intake: Drones with the volume off
      0:40 diagnosis: Hundred hertz, so it's the supply
      1:10 = capacitance 19 µF first reservoir
      1:20 - nineteen out of forty seven, leaking goo too
      1:40 - bleed it first, meter on it, wait for under ten volts
      4:00 work: All three reservoirs new
      4:10 - three new cap assist ers, mind which end is plus
      9:00 result: You have to check the lamp to see it's on`,
  }),
  job({
    key: 's-amp-reverb',
    on: '2026-04-23',
    type: 'valve amplifier',
    client: 'Wenzel Makebelieve',
    title: 'Reverb gone, tank wire off',
    work: ['asked done: No reverb'],
    film: `
      0:10 intake: Dry as a bone since it was moved
      0:50 = resistance open Ω tank output coil
      1:00 diagnosis: Hair wire off the pickup coil inside the pan
      2:00 work: Resoldered under the loupe
      4:00 = resistance 178 Ω tank output coil
      4:20 result: Kick it, thunder`,
  }),
  job({
    key: 's-ss-input',
    on: '2026-01-13',
    type: 'solid-state amplifier',
    client: 'Mina Egsample',
    title: 'Practice amp comes and goes',
    work: ['asked done: Intermittent sound'],
    film: `
      0:10 intake: Lean on the plug and it works
      0:50 diagnosis: Cracked joints at the board-mounted input socket
      0:58 - rings round all three pins, classic
      2:00 work: Old solder sucked off, fresh on, washer added
      3:30 result: Lean all you like`,
  }),
  job({
    key: 's-ss-offset',
    on: '2024-06-19',
    type: 'solid-state amplifier',
    client: 'Hamish Unreal',
    title: 'Cone jumps out at switch-on and stays',
    work: ['asked done: Speaker pops and hums', 'offered done: Check the speaker survived'],
    parts: ['fitted stock: Pair of output transistors with fresh insulators'],
    film: `
      0:10 intake: Cone goes out and sits there
      0:30 = voltage 31.5 V output, no load
      0:36 - thirty one volts DC, speaker unplugged at once
      2:00 diagnosis: Output transistor shorted collector to emitter
      5:00 work: Both replaced, brought up on the lamp limiter
      9:00 = voltage 12 mV output, no load
      9:20 = resistance 6.9 Ω speaker
      9:30 result: Twelve millivolts and a quiet cone`,
  }),
  job({
    key: 's-pedal-power',
    on: '2025-08-06',
    type: 'effects pedal',
    client: 'Lotte Anybody',
    title: 'Overdrive dead on the power supply',
    work: ['asked done: Works on battery only'],
    parts: ['fitted stock: DC socket, panel type'],
    film: `
      0:10 intake: Battery yes, adaptor no
      0:40 diagnosis: Switch contact in the DC socket stuck open
      2:00 work: New socket wired in
      3:10 = current 8.2 mA from the supply
      3:20 result: Both work`,
  }),
  job({
    key: 's-pedal-stomp',
    on: '2026-09-23',
    type: 'effects pedal',
    client: 'Bram Fakename',
    title: 'Footswitch triggers twice',
    work: ['asked done: On-off in one stamp'],
    parts: ['fitted stock: Footswitch, three pole'],
    film: `
      0:10 intake: Stamp once, get two clicks
      0:40 diagnosis: Worn latch in the stomp switch
      2:00 work: Nine lugs off, nine lugs on, same order
      2:20 - photograph first, always photograph first
      5:00 result: One stamp, one click`,
  }),
  job({
    key: 's-pedal-fuzz',
    on: '2023-02-15',
    type: 'effects pedal',
    client: 'Casimir Dummy',
    title: 'Fuzz splutters in the cold',
    work: ['asked done: Cuts out below the note'],
    parts: ['fitted stock: Germanium transistor, picked for leakage'],
    film: `
      0:10 intake: Fine in August, useless in February
      0:50 = voltage 1.2 V second collector
      1:00 - should sit around half the battery, nowhere near
      3:00 work: Second transistor changed, trimmer for the collector
      5:00 = voltage 4.6 V second collector
      5:10 result: Sings and dies away politely`,
  }),
];
