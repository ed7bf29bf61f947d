import { type Harness, type HarnessInput, harnessSchema, type JackSetting } from '@/shared/jack';
import { sayList } from '../trace/say';
import { placesOf } from './places';
import { HarnessProblem } from './problems';

/**
 * Checks a harness: values, and that everything it names exists.
 * @throws HarnessProblem with what to do next
 */
export function prepareHarness(input: HarnessInput): Harness {
  const parsed = harnessSchema.safeParse(input);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const field = issue?.path.join('.') ?? '';
    throw new HarnessProblem(
      `The harness cannot be read at "${field}".`,
      `${issue?.message ?? 'It is not a harness'}.`,
      { field },
    );
  }
  const harness = parsed.data;
  checkIds(harness);
  checkServes(harness);
  checkPositions(harness);
  checkSwitches(harness);
  checkResistors(harness);
  return harness;
}

/**
 * Checks a setting against a harness and brings it into one order.
 * @throws HarnessProblem for a position, switch or pot that the harness has not
 */
export function prepareSetting(harness: Harness, setting: JackSetting): JackSetting {
  const positions = harness.positions.map(({ name }) => name);
  known(setting.position, positions, 'position', 'positions');
  const switches = harness.switches.map(({ id }) => id);
  const pots = [...harness.volumes, ...harness.tones].map(({ id }) => id);
  for (const id of setting.thrown) known(id, switches, 'switch', 'switches');
  for (const id of setting.down) known(id, pots, 'pot', 'pots');
  return {
    position: setting.position,
    thrown: switches.filter((id) => setting.thrown.includes(id)),
    down: pots.filter((id) => setting.down.includes(id)),
  };
}

function known(name: string, names: readonly string[], what: string, plural: string): void {
  if (names.includes(name)) return;
  const there = names.length ? `Its ${plural} are ${sayList(names)}.` : `It has no ${plural}.`;
  throw new HarnessProblem(
    `This harness has no ${what} "${name}".`,
    `${there} Name one of them, or add it to the harness.`,
    { field: what, value: name },
  );
}

function checkIds({ pickups, volumes, tones, switches, resistors, positions }: Harness): void {
  const reserved = ['all', 'tip', 'sleeve', 'ground', 'selector', 'output'];
  const ids = [...pickups, ...volumes, ...tones, ...switches, ...resistors].map(({ id }) => id);
  const twice = [...reserved, ...ids].find((id, at, all) => all.indexOf(id) !== at);
  if (twice) {
    throw new HarnessProblem(
      `The id "${twice}" is taken.`,
      `Every part needs an id of its own, and ${sayList(reserved)} are kept for the harness itself.`,
      { field: 'id', value: twice },
    );
  }
  const names = positions.map(({ name }) => name);
  const sameName = names.find((name, at) => names.indexOf(name) !== at);
  if (sameName) {
    throw new HarnessProblem(
      `Two positions are called "${sameName}".`,
      'Give each position of the selector a name of its own, for example by number.',
      { field: 'positions', value: sameName },
    );
  }
}

function checkServes({ pickups, volumes, tones }: Harness): void {
  const ids = pickups.map(({ id }) => id);
  for (const { serves } of [...volumes, ...tones])
    if (serves !== 'all') known(serves, ids, 'pickup', 'pickups');
  const served = volumes.map(({ serves }) => serves);
  const twice = served.find((one, at) => served.indexOf(one) !== at);
  if (!twice) return;
  throw new HarnessProblem(
    `Two volumes serve ${twice === 'all' ? 'all pickups' : `"${twice}"`}.`,
    'A pickup has one volume of its own at most, and there is one shared volume at most. Leave the other out.',
    { field: 'volumes', value: twice },
  );
}

function checkPositions({ pickups, positions, volumes }: Harness): void {
  const ids = pickups.map(({ id }) => id);
  for (const { name, on, together } of positions) {
    for (const id of on) known(id, ids, 'pickup', 'pickups');
    if (new Set(on).size !== on.length) {
      throw new HarnessProblem(
        `Position "${name}" names a pickup twice.`,
        'Name each pickup that sounds there once.',
        { field: 'positions', value: name },
      );
    }
    const own = volumes.find(({ serves }) => on.includes(serves));
    if (together === 'series' && own && on.length > 1) {
      throw new HarnessProblem(
        `Position "${name}" puts pickups in series, but ${own.name} stands before the selector.`,
        'Pickups can be put in series only where the volume is shared. Make that volume serve all, or the position parallel.',
        { field: 'positions', value: name },
      );
    }
  }
}

function checkSwitches({ pickups, switches }: Harness): void {
  const ids = pickups.map(({ id }) => id);
  for (const one of switches) {
    const splits = one.kind === 'split' ? one.splits : [{ pickup: one.pickup, keeps: null }];
    for (const { pickup: id, keeps } of splits) {
      known(id, ids, 'pickup', 'pickups');
      const pickup = pickups.find((candidate) => candidate.id === id);
      if (!pickup || one.kind === 'phase') continue;
      const isFit = one.kind === 'split' ? pickup.joined === 'series' : pickup.joined !== 'first coil only';
      if (pickup.coils.length !== 2 || !isFit) {
        const how = one.kind === 'split' ? 'two coils in series' : 'two joined coils';
        throw new HarnessProblem(
          `${one.name} needs ${how} in ${pickup.subject}.`,
          'Describe both coils and how they are joined, or take the switch off this pickup.',
          { field: 'switches', value: one.id },
        );
      }
      if (keeps !== null)
        known(
          keeps,
          pickup.coils.map(({ name }) => name),
          'coil',
          'coils',
        );
    }
    checkAlone(
      one.kind,
      one.name,
      splits.map(({ pickup }) => pickup),
      switches,
    );
  }
}

/** Two switches of one kind on one pickup would fight each other. */
function checkAlone(kind: string, name: string, on: string[], switches: Harness['switches']): void {
  const others = switches
    .filter((other) => other.kind === kind)
    .flatMap((other) => (other.kind === 'split' ? other.splits.map(({ pickup }) => pickup) : [other.pickup]));
  const twice = on.find((id) => others.filter((other) => other === id).length > 1);
  if (!twice) return;
  throw new HarnessProblem(
    `More than one ${kind} switch works on "${twice}".`,
    `One switch of a kind per pickup; take "${twice}" off ${name} or off the other.`,
    { field: 'switches', value: twice },
  );
}

function checkResistors(harness: Harness): void {
  const places = placesOf(harness).map(({ place }) => place);
  for (const { name, between } of harness.resistors) {
    for (const place of between) known(place, places, 'place', 'places');
    if (between[0] === between[1]) {
      throw new HarnessProblem(`${name} has both ends on ${between[0]}.`, 'Name two different places.', {
        field: 'resistors',
        value: between[0],
      });
    }
  }
}
