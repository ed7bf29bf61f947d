import type { Harness, HarnessVolume } from '@/shared/jack';
import { sayList } from '../trace/say';
import { type Fault, fault } from './fault';
import * as at from './places';

/** Two pickups that have changed places. */
export function pairFaults({ pickups, volumes, positions }: Harness): Fault[] {
  const volumeOf = (id: string) => volumes.find(({ serves }) => serves === id);
  const hasSelector = positions.length > 1;
  return pickups.flatMap((one, i) =>
    pickups.slice(i + 1).flatMap((other) => {
      const names = sayList([one.subject, other.subject]);
      const about = `${one.id}-${other.id}`;
      const [mine, its] = [volumeOf(one.id), volumeOf(other.id)];
      const atContacts = fault(
        'pickups swapped',
        about,
        `${names} are swapped at the selector's contacts`,
        {
          exchange: [[`${one.id}.contact lead`, `${other.id}.contact lead`]],
        },
        'selector',
      );
      const atVolumes =
        mine && its
          ? fault(
              'pickups swapped',
              about,
              `${names} are swapped at their volumes`,
              {
                exchange: [[`${mine.id}.feed`, `${its.id}.feed`]],
              },
              'volumes',
            )
          : null;
      return [...(hasSelector ? [atContacts] : []), ...(atVolumes ? [atVolumes] : [])];
    }),
  );
}

/** What two wires on a volume pot do when they sit on each other's lugs. */
const lugMistakes = {
  divider: [
    [
      'feed',
      'out',
      'the pickup sits on its wiper and the output on its outer lug (wired as an independent volume)',
    ],
    ['feed', 'earth', 'its pickup wire and its ground wire are swapped: the knob works backwards'],
    ['out', 'earth', 'its output wire and its ground wire are swapped'],
  ],
  independent: [
    [
      'feed',
      'out',
      'the pickup sits on its outer lug and the output on its wiper (wired as an ordinary divider)',
    ],
    ['feed', 'earth', 'its pickup wire and its ground wire are swapped'],
    ['out', 'earth', 'its output wire and its ground wire are swapped: the knob works backwards'],
  ],
} as const;

/** Its three wires on the wrong lugs, or off. */
export function volumeFaults({ switches }: Harness, { id, name, wiring, serves }: HarnessVolume): Fault[] {
  // Straight from the pickup to its volume is one lead, and that is the pickup's.
  const hasLeadIn = serves === 'all' || switches.some((one) => one.kind === 'phase' && one.pickup === serves);
  return [
    ...lugMistakes[wiring].map(([one, other, words]) =>
      fault(
        'volume wired wrong',
        id,
        `${name}: ${words}`,
        { exchange: [[`${id}.${one}`, `${id}.${other}`]] },
        `${one}-${other}`,
      ),
    ),
    fault('pot not grounded', id, `${name}'s ground lug is not grounded`, { cut: [`${id}.earth`] }),
    ...(hasLeadIn
      ? [fault('open lead', id, `the lead into ${name} is open`, { cut: [`${id}.feed`] }, 'in')]
      : []),
    fault('open lead', id, `the lead out of ${name} is open`, { cut: [`${id}.out`] }, 'out'),
  ];
}

/** A selector that makes what it should not, or does not make what it should. */
export function selectorFaults({ pickups, positions }: Harness): Fault[] {
  if (positions.length < 2) return [];
  return [
    ...positions.map(({ name }) =>
      fault('selector stuck', name, `the selector makes "${name}" wherever it stands`, { position: name }),
    ),
    ...pickups.flatMap(({ id, subject }) => [
      fault(
        'open lead',
        id,
        `the selector never makes ${subject}'s contact`,
        { cut: [`${id}.selected`] },
        'contact',
      ),
      ...(positions.every(({ on, together }) => on.includes(id) || together === 'series')
        ? []
        : [
            fault('always on', id, `${subject} is never switched off at the selector`, {
              bridge: [[at.contact(id), at.selectorOutput]],
            }),
          ]),
    ]),
  ];
}

/** Switches that stand still, and the leads of a split that works on several pickups. */
export function switchFaults({ switches, pickups }: Harness): Fault[] {
  return switches.flatMap((one) => {
    const stuck = [true, false].map((thrown) =>
      fault(
        'switch stuck',
        one.id,
        `${one.name} ${thrown ? 'is thrown all the time' : 'does nothing'}`,
        {
          stuck: { id: one.id, thrown },
        },
        thrown ? 'thrown' : 'at rest',
      ),
    );
    if (one.kind !== 'split' || one.splits.length < 2) return stuck;
    const leads = one.splits.map(({ pickup }) => {
      const subject = pickups.find(({ id }) => id === pickup)?.subject ?? pickup;
      return fault(
        'split lead off',
        one.id,
        `${subject}'s lead to ${one.name} is off`,
        { cut: [`${pickup}.split lead`] },
        pickup,
      );
    });
    return [...stuck, ...leads];
  });
}
