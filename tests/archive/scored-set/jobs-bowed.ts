import { job } from './form';

/** The violin family. */
export const bowedJobs = [
  job({
    key: 'violin-post-down',
    on: '2024-03-04',
    type: 'violin family',
    client: 'Adele Nonesuch',
    title: 'Soundpost fell over',
    film: `
      0:10 intake: Rolled about inside after a string change
      0:15 - she took all four off at once. everybody does it once
      2:10 work: Setter in through the f-hole, post up
      2:40 - up... no... a hair towards the bar... there
      5:30 measurement: Place of the post
      5:33 = length 4.5 mm behind the treble foot
      8:00 result: Stands straight, sings`,
  }),
  job({
    key: 'violin-pegs-slip',
    on: '2025-01-20',
    type: 'violin family',
    client: 'Ruth Anybody',
    title: 'Pegs slip in the cold',
    film: `
      0:12 intake: All let go overnight
      1:30 work: Peg dope on, a rub of chalk
      3:40 result: Hold, and turn without a jerk`,
  }),
  job({
    key: 'violin-pegs-bush',
    on: '2023-10-23',
    type: 'violin family',
    client: 'Adele Nonesuch',
    title: 'Peg holes worn oval',
    work: ['asked done: Bush the holes and fit new pegs'],
    parts: ['fitted stock: four boxwood pegs'],
    film: `
      0:15 intake: Pegs nearly through to the other side
      5:00 work: Holes reamed round, bushed with boxwood
      24:00 work: New pegs shaved to fit
      31:00 result: Like new`,
  }),
  job({
    key: 'cello-seam',
    on: '2026-01-26',
    type: 'violin family',
    client: 'Ruth Anybody',
    title: 'Cello buzzes on low C',
    film: `
      0:15 intake: Wolfish rattle on the lowest string
      1:20 diagnosis: Seam open at the lower bout
      1:24 - knock round the edge with a knuckle, there, hear it go dead
      3:00 work: Thin hide glue on a knife, clamps
      6:30 result: Rattle gone
      7:00 - the wolf's still there on F sharp, that's another story`,
  }),
  job({
    key: 'cello-wolf',
    on: '2025-06-02',
    type: 'violin family',
    client: 'Sixten Nemonic',
    title: 'Note that stutters',
    film: `
      0:12 intake: F sharp on the G string shudders
      1:10 measurement: Where it sits
      1:12 = pitch 185 Hz wolf note
      3:00 work: Suppressor on the string behind the bridge
      3:20 - slide it, play, slide it, play
      7:30 result: Tamed`,
  }),
  job({
    key: 'violin-bridge-new',
    on: '2024-11-11',
    type: 'violin family',
    client: 'Sixten Nemonic',
    title: 'Warped bridge',
    work: ['asked done: New bridge cut'],
    parts: ['fitted stock: maple bridge blank, 41 mm'],
    film: `
      0:12 intake: Leans over like a drunk
      2:00 work: Feet fitted to the belly
      14:00 work: Crown shaped
      19:00 measurement: Clearance at the end of the board
      19:02 = string-height 5.2 mm G string, end of the board
      19:08 = string-height 3.4 mm E string, end of the board
      24:00 result: Stands at ninety degrees`,
  }),
  job({
    key: 'bow-rehair',
    on: '2025-09-01',
    type: 'violin family',
    client: 'Ruth Anybody',
    title: 'Rehair a cello bow',
    film: `
      0:15 intake: Half the hair gone on one side
      2:00 work: Frog off, old hank out
      9:00 work: New hank combed wet, wedged
      9:20 - knot, ash, knot again, mind the flame
      20:00 result: Ribbon lies flat
      20:04 = mass 81 g bow`,
  }),
  job({
    key: 'viola-fingerboard',
    on: '2023-06-26',
    type: 'violin family',
    client: 'Adele Nonesuch',
    title: 'Viola board grooved',
    film: `
      0:15 intake: Ruts under the D
      1:00 = relief 0.2 mm fingerboard
      5:00 work: Planed and given its scoop
      21:00 result: Even
      21:03 = relief 0.8 mm fingerboard`,
  }),
  job({
    key: 'bass-fiddle-crack',
    on: '2026-06-22',
    type: 'violin family',
    client: 'Sixten Nemonic',
    title: 'Double bass knocked over, rib cracked',
    film: `
      0:15 intake: Fell on a church floor
      4:00 work: Rib pushed out from inside, glue, cleats
      31:00 result: Sound again
      31:10 - two people to lift the thing, mind your back`,
  }),
];
