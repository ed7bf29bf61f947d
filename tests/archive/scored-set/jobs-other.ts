import { job } from './form';

/** What has no type of its own, one type that a workshop added, and a few jobs with nothing said. */
export const otherJobs = [
  job({
    key: 'lap-steel',
    on: '2024-05-20',
    type: 'other',
    client: 'Imke Nobody',
    title: 'Lap steel: pickup hot lead off',
    features: 'six-string lap steel, 1950s look',
    traces: [
      {
        subject: 'lap steel pickup',
        conductors: 'core braid',
        rows: ['poles'],
        joint: {
          at: '4:10',
          title: 'As it is, on a new lead',
          lines: ['hot: core → socket tip', 'ground: braid → socket sleeve'],
        },
      },
    ],
    film: `
      0:12 intake: No output
      1:10 measurement: At the socket
      1:12 = resistance open kΩ output
      2:30 diagnosis: Lead broken where it bends under the plate
      4:00 work: New lead, strain relief
      5:30 result: Nine and a bit
      5:33 = resistance 9.2 kΩ pickup`,
  }),
  job({
    key: 'zither-strings',
    on: '2025-12-08',
    type: 'other',
    client: 'Linde Vacant',
    title: 'Zither, thirty-two strings to change',
    film: `
      0:12 intake: Rust on everything
      2:00 work: One at a time so the frame keeps its load
      2:20 - glasses on, these wires whip
      50:00 work: Pins tapped in where loose
      70:00 result: In tune, for today`,
  }),
  job({
    key: 'cigar-box',
    on: '2023-05-15',
    type: 'other',
    client: 'Bo Filler',
    title: 'Box guitar wants a socket',
    film: `
      0:12 intake: Home-made three-string from a cigar box
      1:30 work: Disc under the lid, socket in the side
      6:00 result: Rude noise, as wanted`,
  }),
  job({
    key: 'dulcimer',
    on: '2026-10-19',
    type: 'other',
    client: 'Tove Unnamed',
    title: 'Mountain dulcimer warped',
    film: `
      0:12 intake: Top sunk, strings on the frets
      2:00 = string-height 0.6 mm melody string
      4:00 work: Brace let in from the end
      15:00 result: Two millimetres clear
      15:02 = string-height 2.0 mm melody string`,
  }),
  job({
    key: 'gurdy-wheel',
    on: '2025-01-06',
    type: 'hurdy-gurdy',
    client: 'Imke Nobody',
    title: 'Wheel scrapes once a turn',
    film: `
      0:12 intake: Swish, swish, swish
      1:40 diagnosis: Wheel out of round
      1:44 = length 0.3 mm run-out
      4:00 work: Turned true with a sharp chisel on the rest
      9:00 work: Rosin and cotton new
      14:00 result: Even drone`,
  }),
  job({
    key: 'gurdy-buzz-bridge',
    on: '2026-05-04',
    type: 'hurdy-gurdy',
    client: 'Imke Nobody',
    title: 'Dog will not bark',
    film: `
      0:12 intake: Buzzing bridge silent at any speed
      1:30 work: Foot trimmed, tirant peg re-fitted
      1:50 - it has to just about dance on the top
      6:00 result: Barks on the beat`,
  }),
  job({
    key: 'harp-lever',
    on: '2024-08-26',
    type: 'other',
    client: 'Saskia Ipsum',
    title: 'Lever harp, four levers out',
    film: `
      0:12 intake: Semitones wrong on four strings
      2:00 measurement: Lever up against lever down
      2:02 = intonation 31 cents A above middle C
      5:00 work: Levers moved along their slots
      9:00 result: Within three
      9:02 = intonation 3 cents A above middle C`,
  }),
  job({
    key: 'keys-stuck',
    on: '2023-09-25',
    type: 'other',
    client: 'Knud Vague',
    title: 'Squeezebox button stays down',
    film: `
      0:12 intake: C on the right hand sticks
      2:00 work: Ends off, lever bent back, felt brushed
      6:00 result: Pops up`,
  }),
];
