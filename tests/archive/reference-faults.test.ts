import { describe, expect, it } from 'vitest';
import { type FaultJob, faultsOf } from '@/lib/archive/reference/faults';
import { goTogether, isCure, isFault } from '@/lib/archive/reference/trouble-words';
import { jobIdSchema, takeIdSchema } from '@/shared/ids';

const bounds = { moments: 3, cures: 6 };
const takeId = takeIdSchema.parse('t0000000000000000000');
let number = 100;

function faultJob(
  found: string[],
  done: string[],
  instrument = 'electric guitar',
  hasResult = false,
): FaultJob {
  number -= 1;
  const id = jobIdSchema.parse(`j${String(number).padStart(19, '0')}`);
  const told = (texts: string[]) => texts.map((text, at) => ({ text, moment: { takeId, ms: at * 1000 } }));
  const job = { id, number, title: 'A job', instrument, day: '2026-05-04' };
  return { job, found: told(found), done: told(done), hasResult };
}

const faults = (jobs: FaultJob[], only = '') => faultsOf(jobs, [], bounds, only);
const find = (jobs: FaultJob[], word: string) => faults(jobs).find((fault) => fault.word === word);

describe('faults and fixes', () => {
  it('bring different words for one fault together, and tell it in the shop’s commonest', () => {
    const jobs = [
      faultJob(['It hums'], ['Shielded with copper foil']),
      faultJob(['Mains hum in both positions'], ['Shielding paint in the cavity']),
      faultJob(['It hums'], ['Bridge ground renewed']),
    ];
    const hum = find(jobs, 'hum');
    expect(hum).toMatchObject({ jobs: 3, said: 'hums', instrument: 'electric guitar', without: 0 });
    expect(hum?.cures.find(({ word }) => word === 'shielding')?.jobs).toBe(2);
    expect(hum?.cures.find(({ word }) => word === 'bridgeground')?.jobs).toBe(1);
  });

  it('keep instrument types apart', () => {
    const jobs = [faultJob(['hum'], []), faultJob(['hum'], [], 'valve amplifier')];
    expect(faults(jobs).map(({ instrument, jobs }) => [instrument, jobs])).toEqual([
      ['electric guitar', 1],
      ['valve amplifier', 1],
    ]);
  });

  it('count work for a fault only where it is told which it belongs to', () => {
    // Crackle and a lifting bridge are two troubles; contact cleaner goes with the one, clamps with the other.
    const two = [
      faultJob(['Scratchy volume', 'Bridge is lifting'], ['Contact cleaner', 'Clamped and glued']),
    ];
    const cures = (word: string) => find(two, word)?.cures.map((cure) => cure.word);
    expect(cures('crackle')).toEqual(['contactcleaner']);
    expect(cures('bridgelift')).not.toContain('contactcleaner');
  });

  it('tell work that the list has no word for as it was written, and say where there is none', () => {
    const [fault] = faults([faultJob(['It hums'], ['Talked to the neighbour about his mast'])]);
    expect(fault?.cures.map(({ said }) => said)).toEqual(['Talked to the neighbour about his mast']);
    expect(faults([faultJob(['It hums'], [])])[0]).toMatchObject({ cures: [], without: 1 });
  });

  it('point at moments, at most so many, and count results', () => {
    const jobs = Array.from({ length: 9 }, (_, at) => faultJob(['It hums'], ['solder'], 'banjo', at < 4));
    const [hum] = faults(jobs);
    expect(hum).toMatchObject({ jobs: 9, shown: 4 });
    expect(hum?.found).toHaveLength(bounds.moments);
    expect(hum?.found[0]).toMatchObject({
      said: 'It hums',
      moment: { takeId, ms: 0 },
      job: { id: jobs[0]?.job.id },
    });
  });

  it('find nothing in words that tell of no fault', () => {
    expect(
      faults([faultJob(['A guitar with a volume pot', '', '🎸', 'DROP TABLE jobs'], ['solder'])]),
    ).toEqual([]);
  });

  it('take one fault alone', () => {
    const jobs = [faultJob(['hum and crackle'], ['solder'])];
    expect(faults(jobs, 'crackle').map(({ word }) => word)).toEqual(['crackle']);
  });
});

describe('the list of troubles', () => {
  // Common practice, no source.
  it('knows what is wrong from what cures it, and a part from a fault', () => {
    expect(isFault('hum')).toBe(true);
    expect(isFault('dryjoint')).toBe(true);
    expect(isFault('volumepot')).toBe(false);
    expect(isFault('shielding')).toBe(false);
    expect(isCure('contactcleaner')).toBe(true);
    expect(goTogether('crackle', 'contactcleaner')).toBe(true);
    expect(goTogether('crackle', 'clamp')).toBe(false);
  });
});
