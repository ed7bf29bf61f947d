import { ask } from './ask';

const today = '2026-11-20';

/** Questions to the blind set, asked in whole sentences as often as in scraps. Not to be read by who writes rules. */
export const blindQuestions = [
  ask('date decides', 'the humbucker with four leads from last summer', ['b-hum4@2:00=3'], '2026-02-10'),
  ask('date decides', 'buzzing guitar in 2024', ['b-ground-buzz=3'], today),
  ask(
    'date decides',
    'bridge glued back on between christmas and new year',
    ['b-acoustic-bridge-2=3'],
    '2026-01-20',
  ),
  ask('no shared word', 'scratchy potentiometer on a guitar', ['b-volume-noise=3'], today),
  ask('no shared word', 'valve changed because it rang', ['b-tube-ping=3', 'b-tube-bias=1'], today),
  ask('no shared word', 'stompbox button unreliable', ['b-pedal-switch=3'], today),
  ask('no shared word', 'soundpost refitted', ['b-violin-post=3'], today),
  ask('plain', 'fret dressing', ['b-fretwork=3', 'b-acoustic-dry=1'], today),
  ask('no shared word', 'lower the mandolin action', ['b-mando-setup=3'], today),
  ask('no shared word', 'smoothing caps dried out', ['b-tube-hum=3'], today),
  ask('value', 'bridge pickup around 9.1k', ['b-hum4@12:04=3'], today),
  ask('value', 'action 4/64 at the 12th', ['b-action-64@9:03=3'], today),
  ask('value', 'idle current over 45 ma', ['b-tube-bias@2:04=3'], today),
  ask('value', 'humidity under 30', ['b-acoustic-dry@0:15=3'], today),
  ask('instrument type', 'bass eating batteries', ['b-bass-battery=3'], today),
  ask('instrument type', 'banjo head tightened', ['b-banjo-loose=3'], today),
  ask('client', 'what did lottie bring in with a bad speaker', ['b-ss-dc=3'], today),
  ask('basis', 'stated year', ['b-scroll-inlay#claim: early eighties=3'], today),
  ask('one word', 'rewind', ['b-rewind=3'], today),
  ask(
    'one word',
    'buzz',
    ['b-ground-buzz=3', 'b-ground-buzz-later=3', 'b-tube-hum=1', 'b-pedal-noise=1'],
    today,
  ),
  ask('half sentence', 'which one had the loop jack oxidised so no sound', ['b-ss-dead=3'], today),
  ask('slip', 'hedstock crakced', ['b-headstock=3'], today),
  ask('no answer', 'clarinet pad replaced', [], today),
  ask('no answer', 'refret in 2021', [], today),
  ask('no answer', 'neck pickup above 20k', [], today),
];
