import { job } from './form';

/** Valve and solid-state amplifiers. */
export const amplifierJobs = [
  job({
    key: 'amp-bias-24',
    on: '2024-02-12',
    type: 'valve amplifier',
    client: 'Lorenz Nemo',
    title: 'New output valves, bias to be set',
    work: ['asked done: Fit and bias a matched pair'],
    parts: ['fitted client: matched pair of output valves'],
    film: `
      0:15 intake: Old pair five years old
      1:00 - one hand in the pocket from here on. caps still hold when it's unplugged
      3:00 measurement: Plate volts and idle current
      3:03 = plate-voltage 432 V V4
      3:20 = bias-current 41 mA V4
      3:31 = bias-current 39 mA V5
      3:40 - too hot for me, bring it down a bit
      6:00 work: Turned the trimmer
      7:10 result: Thirty four each
      7:12 = bias-current 34 mA V4
      7:18 = bias-current 33.5 mA V5`,
  }),
  job({
    key: 'amp-bias-26',
    on: '2026-09-21',
    type: 'valve amplifier',
    client: 'Otto Dummer',
    title: 'Red plating',
    film: `
      0:10 intake: One valve glows cherry red
      0:14 - off off off
      2:20 diagnosis: No negative voltage on the grid
      2:24 = voltage -3 V V5 grid
      2:35 - should be minus forty something
      5:00 diagnosis: Leaky coupling capacitor
      8:30 work: Coupling cap changed, new pair in
      12:00 measurement: Idle
      12:02 = bias-current 36 mA V5
      12:10 = plate-voltage 418 V V5
      14:00 result: Runs cool`,
  }),
  job({
    key: 'amp-filter-caps',
    on: '2023-09-04',
    type: 'valve amplifier',
    client: 'Gunda Dryrun',
    title: 'Loud hum with everything turned down',
    work: ['asked done: Cure the hum'],
    parts: ['fitted stock: 3 electrolytics 47 µF 500 V', 'removed kept: three bulging electrolytics'],
    film: `
      0:10 intake: Hum even at zero, twice the mains note
      1:00 = pitch 100 Hz hum
      1:10 - hundred hertz, so it's the supply, not the heaters
      2:30 diagnosis: Dried-out filter capacitors
      2:36 - look at the tops, bulging
      4:00 work: Drained through a resistor, checked with the meter, then out
      4:20 = voltage 0.4 V reservoir after draining
      15:00 work: Three new electrolytics
      19:00 result: Just a breath left`,
  }),
  job({
    key: 'amp-microphonic',
    on: '2025-02-24',
    type: 'valve amplifier',
    client: 'Silas Proforma',
    title: 'Squeals when loud',
    film: `
      0:15 intake: Howls from half way up
      1:20 diagnosis: First preamp valve microphonic
      1:26 - tap them with a pencil, one, two... ding! that one
      2:40 work: Swapped V1
      4:00 result: Silent when tapped`,
  }),
  job({
    key: 'amp-no-reverb',
    on: '2024-10-07',
    type: 'valve amplifier',
    client: 'Pella Mockford',
    title: 'Reverb gone',
    film: `
      0:12 intake: Dry as a bone on ten
      1:30 measurement: Tank coils
      1:33 = resistance 1.2 Ω tank input
      1:45 = resistance open kΩ tank output
      1:52 - output side's open
      3:30 diagnosis: Wire broken off inside the tank
      5:00 work: Soldered the hair wire back
      8:00 result: Splashes again
      8:03 = resistance 203 Ω tank output`,
  }),
  job({
    key: 'amp-fuse-blows',
    on: '2023-03-13',
    type: 'valve amplifier',
    client: 'Evka Whoever',
    title: 'Blows the fuse at switch-on',
    film: `
      0:10 intake: Third fuse this week
      1:40 work: On the lamp limiter, lamp full bright
      1:46 - that's a dead short somewhere
      3:30 diagnosis: Rectifier shorted
      3:36 = resistance 2 Ω rectifier
      6:00 work: New rectifier, right fuse, not that nail
      9:00 result: Lamp dims, as it should`,
  }),
  job({
    key: 'amp-scratchy-pots',
    on: '2025-07-28',
    type: 'valve amplifier',
    client: 'Jorunn Placeholder',
    title: 'Controls crackle',
    film: `
      0:12 intake: Crackling when treble is moved
      1:10 diagnosis: DC on the pot
      1:14 = voltage 1.8 V treble wiper
      1:20 - not dirt at all, there's DC leaking through the coupling cap
      4:00 work: Cap changed
      6:00 result: Quiet turns`,
  }),
  job({
    key: 'amp-weak',
    on: '2026-02-16',
    type: 'valve amplifier',
    client: 'Rasmus Standin',
    title: 'Half the power it had',
    film: `
      0:12 intake: Runs out of steam before the drummer
      2:00 measurement: Both output valves
      2:02 = bias-current 38 mA V3
      2:10 = bias-current 3 mA V4
      2:18 - one's asleep
      4:00 diagnosis: Cathode resistor open on one side
      6:30 work: Resistor replaced
      9:00 result: Full power into the dummy load
      9:04 = voltage 15.4 V across 8 ohm load`,
  }),
  job({
    key: 'amp-speaker-rub',
    on: '2024-08-19',
    type: 'valve amplifier',
    client: 'Wenda Plainly',
    title: 'Farty low notes',
    film: `
      0:12 intake: Flubs and rasps on the bottom string
      1:00 diagnosis: Voice coil rubs
      1:05 - push the cone, hear the grit
      2:00 = resistance 6.8 Ω speaker
      4:30 work: Another speaker from the shelf
      7:00 result: Clean`,
    parts: ['fitted stock: used 12 inch speaker, 8 ohm'],
  }),
  job({
    key: 'amp-ground-lift',
    on: '2025-12-15',
    type: 'valve amplifier',
    client: 'Corvin Testwell',
    title: 'Old two-pin mains lead',
    work: ['found done: Mains earth missing'],
    film: `
      0:12 intake: Tingles on the lips at the microphone
      0:20 - that's how people get killed. it does not leave here like that
      2:00 diagnosis: No safety earth
      2:10 = resistance open kΩ chassis to earth pin
      5:00 work: Three-core lead, earth bolted to the chassis, old cap out
      9:00 result: Earth proved
      9:02 = resistance 0.1 Ω chassis to earth pin`,
  }),
  job({
    key: 'ss-one-channel',
    on: '2024-04-29',
    type: 'solid-state amplifier',
    client: 'Nils Overexample',
    title: 'Second channel dead',
    film: `
      0:12 intake: Clean fine, lead channel nothing
      2:00 measurement: Supply rails
      2:02 = voltage 15.1 V plus rail
      2:10 = voltage -15.0 V minus rail
      4:20 diagnosis: Op-amp on the lead channel stuck at the rail
      4:24 = voltage 13.9 V op-amp output
      7:00 work: Socket and new chip
      9:30 result: Both channels`,
  }),
  job({
    key: 'ss-thump',
    on: '2025-10-27',
    type: 'solid-state amplifier',
    client: 'Henk Dolor',
    title: 'Thump and then silence',
    film: `
      0:12 intake: Big thump on power up, cone jumps out
      1:30 measurement: DC at the speaker terminals
      1:32 = voltage 31 V speaker output
      1:38 - thirty one volts, speaker off, now
      4:00 diagnosis: Output transistor shorted
      9:00 work: Pair of transistors, fresh paste
      15:00 measurement: Offset
      15:02 = voltage 12 mV speaker output
      17:00 result: Plays, stays cold`,
  }),
  job({
    key: 'ss-fan',
    on: '2026-07-27',
    type: 'solid-state amplifier',
    client: 'Vreni Anyone',
    title: 'Shuts down after twenty minutes',
    film: `
      0:12 intake: Bass amp goes off in the heat, comes back later
      1:20 measurement: Heatsink
      1:23 = temperature 88 °C heatsink
      2:40 diagnosis: Fan stalled, full of fluff
      4:00 work: New fan, fins blown out
      9:00 result: Never over fifty
      9:03 = temperature 47 °C heatsink`,
  }),
  job({
    key: 'ss-input-jack',
    on: '2023-01-16',
    type: 'solid-state amplifier',
    client: 'Tamsin Blank',
    title: 'Input only works at an angle',
    film: `
      0:12 intake: Plug has to be held down
      1:30 diagnosis: Solder joint cracked at the input socket
      1:36 - ring round the pin, see it, classic dry joint
      3:00 work: Resoldered all four
      4:20 result: Solid`,
  }),
  job({
    key: 'ss-hum-cable',
    on: '2024-12-02',
    type: 'solid-state amplifier',
    client: 'Yorick Tester',
    title: 'Hum only with the laptop connected',
    film: `
      0:12 intake: Fine with a guitar, hums with the computer
      1:30 diagnosis: Ground loop through the mains
      1:36 - unplug the charger and listen. see
      3:00 work: Isolating transformer in the line
      4:10 result: Silent`,
  }),
  job({
    key: 'ss-pots',
    on: '2023-07-17',
    type: 'solid-state amplifier',
    client: 'Bertil Notional',
    title: 'Scratchy controls and a broken knob',
    film: `
      0:12 intake: Every knob scratches
      1:40 work: Cleaner in all seven pots
      4:00 work: One shaft snapped, pot replaced
      6:30 result: All smooth`,
  }),
];
