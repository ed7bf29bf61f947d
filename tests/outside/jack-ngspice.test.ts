import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectedAtJack, type Resistor, solve } from '@/lib/wiring/jack';
import type { HarnessInput } from '@/shared/jack';
import {
  doubleCoil,
  fourPots,
  onePickup,
  singleCoil,
  split,
  threeSingles,
  threeWay,
  tone,
  twoIndependent,
  volume,
} from '../wiring/jack-harnesses';

/**
 * ngspice, an independent circuit simulator, in batch mode. The netlists are drawn by hand from the wiring of each
 * instrument, not from our description of it: node 0 is ground and sleeve, `tip` the jack's tip. One milliampere
 * goes in at the tip; its voltage is the resistance in kΩ. A shunt of 1 TΩ keeps floating nodes solvable.
 */
const folder = mkdtempSync(join(tmpdir(), 'benchtake-ngspice-'));
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(() => {
  const { error, status } = spawnSync('ngspice', ['--version']);
  if (error || status !== 0) {
    throw new Error(
      'ngspice is missing. It comes with the Debian package "ngspice": apt-get install ngspice',
    );
  }
});

function simulate(parts: string, terminal = 'tip'): number {
  const file = join(folder, 'harness.cir');
  const tail = `.options rshunt=1e12\n.control\nset numdgt=12\nop\nprint v(${terminal})\n.endc\n.end\n`;
  writeFileSync(file, `* harness\nI1 0 ${terminal} 1m\n${parts.trim()}\n${tail}`);
  const { stdout, stderr } = spawnSync('ngspice', ['-b', file], { encoding: 'utf8' });
  const [, volts] = /^v\(.*\) = (\S+)/m.exec(stdout) ?? [];
  if (volts === undefined) throw new Error(`ngspice gave no voltage:\n${stdout}\n${stderr}`);
  return Number(volts) * 1000;
}

const twoPickups = (rest: Partial<HarnessInput>): HarnessInput => ({
  pickups: [doubleCoil('neck', 4080, 3971), doubleCoil('bridge', 4420, 4370)],
  positions: threeWay,
  ...rest,
});

const cases: { name: string; harness: HarnessInput; setting: string; netlist: string }[] = [
  {
    name: 'a pickup straight to the jack',
    harness: { pickups: [singleCoil('neck', 6200)], positions: [{ name: 'on', on: ['neck'] }] },
    setting: 'on',
    netlist: 'Rneck tip 0 6200',
  },
  {
    name: 'four pots, both on, all up, tones through their capacitors',
    harness: fourPots,
    setting: 'both, pots up',
    netlist: `
      Rneckslug tip n1 4080
      Rneckscrew n1 0 3971
      Rbridgeslug tip n2 4420
      Rbridgescrew n2 0 4370
      Rneckvol tip 0 500k
      Rbridgevol tip 0 500k
      Rnecktone tip n3 500k
      Cneck n3 0 22n
      Rbridgetone tip n4 500k
      Cbridge n4 0 22n`,
  },
  {
    name: 'four pots, both on, the neck split to its slug coil',
    harness: fourPots,
    setting: 'both, neck split thrown, pots up',
    netlist: `
      Rneckslug tip 0 4080
      Rneckscrew 0 0 3971
      Rbridgeslug tip n2 4420
      Rbridgescrew n2 0 4370
      Rneckvol tip 0 500k
      Rbridgevol tip 0 500k`,
  },
  {
    name: 'four pots, bridge on, its volume down: the wiper on the grounded lug',
    harness: fourPots,
    setting: 'bridge, bridge volume down',
    netlist: `
      Rwiper tip 0 1u
      Rtrack b 0 500k
      Rbridge b 0 8790`,
  },
  {
    name: 'three single coils, bridge and middle, one shared volume',
    harness: threeSingles,
    setting: '2, pots up',
    netlist: `
      Rbridge tip 0 6700
      Rmiddle tip 0 6100
      Rneck off 0 5900
      Rvolume tip 0 250k`,
  },
  {
    name: 'independent volumes, both up',
    harness: twoIndependent,
    setting: 'on, pots up',
    netlist: `
      Rneck tip 0 7200
      Rbridge tip 0 8100
      Rv1 tip 0 250k
      Rv2 tip 0 250k`,
  },
  {
    name: 'independent volumes, neck down: its pickup at the grounded end of the track',
    harness: twoIndependent,
    setting: 'on, neck volume down',
    netlist: `
      Rneck w 0 7200
      Rwiper w 0 1u
      Rv1 tip w 250k
      Rbridge tip 0 8100
      Rv2 tip 0 250k`,
  },
  {
    name: 'independent volumes, both down: two tracks side by side',
    harness: twoIndependent,
    setting: 'on, all pots down',
    netlist: `
      Rv1 tip 0 250k
      Rv2 tip 0 250k
      Rneck a 0 7200
      Rshort a 0 1u`,
  },
  {
    name: 'a treble bleed across a volume that is up: both its ends on one point',
    harness: onePickup,
    setting: 'on, pots up',
    netlist: `
      Rslug tip link 4420
      Rscrew link 0 4370
      Rvolume tip 0 500k
      Rbleed tip tip 150k`,
  },
  {
    name: 'split to the screw coil: the link taken to hot',
    harness: onePickup,
    setting: 'on, bridge split thrown, pots up',
    netlist: `
      Rslug tip tip 4420
      Rscrew tip 0 4370
      Rvolume tip 0 500k`,
  },
  {
    name: 'two single coils in series on one position',
    harness: {
      pickups: [singleCoil('neck', 7100), singleCoil('bridge', 6300)],
      volumes: [volume('all', 250_000)],
      positions: [{ name: 'both in a row', on: ['neck', 'bridge'], together: 'series' }],
    },
    setting: 'both in a row, pots up',
    netlist: `
      Rneck tip m 7100
      Rbridge m 0 6300
      Rvolume tip 0 250k`,
  },
  {
    name: 'a volume each and a shared one after the selector',
    harness: twoPickups({
      volumes: [volume('neck'), volume('bridge'), volume('all', 1_000_000)],
      tones: [tone('all')],
    }),
    setting: 'both, pots up',
    netlist: `
      Rneck tip 0 8051
      Rbridge tip 0 8790
      Rv1 tip 0 500k
      Rv2 tip 0 500k
      Rshared tip 0 1meg
      Rtone tip t 500k
      Ct t 0 47n`,
  },
  {
    name: 'a resistor from the link to the selector: not to be undone by series and parallel',
    harness: twoPickups({
      volumes: [volume('all')],
      resistors: [{ id: 'odd', name: 'odd resistor', ohms: 10_000, between: ['neck.link0', 'bridge.link0'] }],
    }),
    setting: 'both, pots up',
    netlist: `
      Rneckslug tip a 4080
      Rneckscrew a 0 3971
      Rbridgeslug tip b 4420
      Rbridgescrew b 0 4370
      Rodd a b 10k
      Rvolume tip 0 500k`,
  },
  {
    name: 'the phase switch and the split of one pickup: the link to ground now leaves the other coil',
    harness: twoPickups({
      switches: [split('neck'), { kind: 'phase', id: 'phase', name: 'phase switch', pickup: 'neck' }],
    }),
    setting: 'neck, neck split thrown, phase switch thrown',
    netlist: `
      Rneckslug 0 0 4080
      Rneckscrew 0 tip 3971`,
  },
];

describe('the check at the jack against ngspice', () => {
  it.each(cases)('$name', ({ harness, setting, netlist }) => {
    const expected = expectedAtJack(harness).find(({ label }) => label === setting);
    if (!expected) throw new Error(`no setting "${setting}"`);
    const simulated = simulate(netlist);
    // The wiper of 1 µΩ and the shunt of 1 TΩ are what the simulator needs; a few parts in 10⁸ are theirs.
    expect(Math.abs((expected.ohms ?? Number.NaN) - simulated)).toBeLessThan(1e-4 + 1e-6 * simulated);
  });

  it('an open one', () => {
    const harness: HarnessInput = {
      pickups: [singleCoil('neck', 6200)],
      positions: [
        { name: 'off', on: [] },
        { name: 'on', on: ['neck'] },
      ],
    };
    expect(expectedAtJack(harness)[0]).toMatchObject({ label: 'off', outcome: 'open', ohms: null });
    expect(simulate('Rneck out 0 6200')).toBeGreaterThan(1e11);
  });

  it('networks of any shape', () => {
    const names = ['tip', 'a', 'b', 'c', 'd', '0'];
    const node = fc.constantFrom(...names);
    const resistor = fc.record({ from: node, to: node, ohms: fc.integer({ min: 10, max: 1_000_000 }) });
    const joined = fc
      .array(resistor, { minLength: 1, maxLength: 12 })
      .map((some): Resistor[] => [
        ...some,
        { from: 'tip', to: 'a', ohms: 4700 },
        { from: 'a', to: '0', ohms: 10_000 },
      ]);
    fc.assert(
      fc.property(joined, (network) => {
        const netlist = network.map(({ from, to, ohms }, i) => `R${i} ${from} ${to} ${ohms}`).join('\n');
        const simulated = simulate(netlist);
        expect(Math.abs(solve(network, 'tip', '0').ohms - simulated)).toBeLessThan(1e-4 + 1e-6 * simulated);
      }),
      { numRuns: 25 },
    );
  });
});
