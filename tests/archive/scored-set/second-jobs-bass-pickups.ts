import { job } from './form';

/** Basses and loose pickups of the second blind set. */
export const secondBassAndPickupJobs = [
  job({
    key: 's-bass-hiss',
    on: '2025-05-13',
    type: 'bass guitar',
    client: 'Gideon Nemo',
    title: 'Onboard preamp hisses',
    work: ['asked done: Hiss with the treble up', 'offered declined: Passive bypass // never turns it off'],
    film: `
      0:12 intake: Sounds like rain with the treble up
      1:00 = voltage 6.9 V battery
      1:10 - nine volt showing six point nine, there you are
      1:30 work: Fresh battery, contacts pinched
      2:20 = voltage 9.4 V battery
      3:00 result: Hiss down to nothing much`,
  }),
  job({
    key: 's-bass-dead',
    on: '2024-10-02',
    type: 'bass guitar',
    client: 'Mina Egsample',
    title: 'Active five-string, no output',
    work: ['asked done: No sound at all'],
    film: `
      0:12 intake: Silent, new battery no help
      0:50 diagnosis: Lead off the battery clip
      0:58 - red one's hanging in the breeze
      1:40 work: Resoldered with a bit of sleeving
      2:10 = current 0.6 mA battery drain
      2:30 result: Loud as you like`,
  }),
  job({
    key: 's-bass-bow',
    on: '2025-01-22',
    type: 'bass guitar',
    client: 'Gideon Nemo',
    title: 'Bass neck pulled forward by the cold',
    work: ['asked done: Too hard to play'],
    film: `
      0:10 intake: Lived in a van since November
      0:40 = relief 0.9 mm neck
      0:48 - nearly a millimetre, it's a banana
      2:00 work: Rod half a turn, rest, another quarter
      9:00 = relief 0.35 mm neck
      9:10 = string-height 2.2 mm E string, 12th fret
      9:20 result: Plays like a bass again`,
  }),
  job({
    key: 's-bass-half',
    on: '2026-10-14',
    type: 'bass guitar',
    client: 'Sunniva Nobody',
    title: 'Two strings much weaker than the others',
    work: ['asked open: Weak D and G'],
    traces: [{ subject: 'split pickup', conductors: 'white black red', rows: ['E-A half', 'D-G half'] }],
    film: `
      0:12 intake: E and A roar, D and G whisper
      1:30 measurement: Each half by itself
      1:34 = resistance 5.6 kΩ E-A half [white-red]
      1:50 = resistance open kΩ D-G half [red-black]
      2:00 - that half's open, red to black nothing, broken at the start I bet
      3:00 diagnosis: Wire broken at the eyelet or deeper in
      3:10 - under the microscope tomorrow`,
  }),
  job({
    key: 's-pickup-rewound',
    on: '2024-05-07',
    type: 'loose pickup',
    client: 'Luned Placeholder',
    title: 'Dead single coil, wound afresh',
    work: ['asked done: Bring it back to life'],
    parts: ['fitted stock: Coil wire 0.063 mm, plain enamel', 'reused: Magnets and flatwork'],
    film: `
      0:10 intake: Came in an envelope
      0:30 = resistance open kΩ pickup
      0:40 - dead as a doornail
      3:00 work: Old wire cut away, eight thousand turns by hand
      20:00 = resistance 7.2 kΩ pickup
      20:10 = inductance 2.9 H pickup
      20:30 result: Alive, a shade hotter than its sisters`,
  }),
  job({
    key: 's-pickup-wax',
    on: '2025-09-16',
    type: 'loose pickup',
    client: 'Orla Pretend',
    title: 'Pickup squeals at volume',
    work: ['asked done: Squeal'],
    film: `
      0:10 intake: Whistles as soon as the gain goes up
      0:40 diagnosis: Loose windings, tap the cover and it talks
      2:00 = temperature 64 °C wax bath
      2:10 work: Ten minutes in wax, till the bubbles stop
      2:40 - hot wax, double boiler, goggles, never on a bare flame
      13:00 result: Tap it now, nothing`,
  }),
  job({
    key: 's-pickup-braid',
    on: '2026-05-27',
    type: 'loose pickup',
    client: 'Rufus Stand-In',
    title: 'Mystery mini with two wires and a braid',
    work: ['asked done: Say what it is and which is which'],
    traces: [
      {
        subject: 'mini humbucker',
        conductors: 'green white shield',
        joint: {
          at: '6:00',
          title: 'As it is, frame on its own',
          lines: ['hot: green (measured)', 'ground: white (measured)', 'ground: shield (assumed)'],
        },
      },
    ],
    claims: ['year doubtful stated: about 1970 // seller said so'],
    film: `
      0:10 intake: From a junk shop
      1:00 = resistance 6.45 kΩ mini humbucker [green-white]
      1:20 = resistance open kΩ mini humbucker [green-shield]
      1:30 - braid goes nowhere but the frame
      2:20 = polarity-kick 1 kick mini humbucker, green on red lead
      2:30 - green goes up with steel on, so green is hot
      6:10 result: Labelled and bagged`,
  }),
];
