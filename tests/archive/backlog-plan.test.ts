import { describe, expect, it } from 'vitest';
import { dated, wallClockOf } from '@/lib/archive/backlog/dated';
import { type BacklogFile, type EarlierJob, planBacklog } from '@/lib/archive/backlog/plan';
import { type JobRule, jobRules } from '@/shared/backlog';
import { jobIdSchema } from '@/shared/ids';

const minute = 60_000;
const now = Date.parse('2026-11-25T12:00:00Z');
const job = (number: number) => ({
  id: jobIdSchema.parse(String(number).padStart(20, '0')),
  number,
  title: `Job ${number}`,
});

/** A recording that tells its time as UTC. */
function file(path: string, at: string | null, more: Partial<BacklogFile> = {}): BacklogFile {
  return {
    path,
    recordedAt: at === null ? null : { epochMs: Date.parse(at), source: 'utc', offsetMinutes: null },
    clockOffsetMinutes: 0,
    modifiedAt: Date.parse('2024-01-01T12:00:00Z'),
    durationMs: 10 * minute,
    captions: [],
    fingerprint: path,
    unreadable: null,
    use: null,
    ...more,
  };
}

function plan(
  files: BacklogFile[],
  rule: JobRule = 'usual',
  earlier: EarlierJob[] = [],
  under = '',
  timeZone = 'UTC',
) {
  return planBacklog(files, earlier, { rule, under, timeZone, now });
}

const inShort = (made: ReturnType<typeof plan>) =>
  made.jobs.map(({ home, day, takes }) => `${home}|${day}|${takes.map(({ name }) => name).join(' ')}`);

describe('the day of a recording', () => {
  const latestDay = '2026-11-25';
  const dayOf = (facts: BacklogFile, timeZone = 'UTC') => {
    const { day, from } = dated(facts, wallClockOf(timeZone), latestDay);
    return `${day} ${from}`;
  };

  // Outside check: days and offsets as `zdump -v Europe/Berlin`, `Pacific/Kiritimati` and `America/New_York` of the
  // IANA time zone database list them.
  it.each([
    ['2019-03-14T23:30:00Z', 'UTC', '2019-03-14'],
    ['2019-03-14T23:30:00Z', 'Europe/Berlin', '2019-03-15'],
    ['2019-03-30T23:30:00Z', 'Europe/Berlin', '2019-03-31'],
    // Clocks went from 02:00 to 03:00 at 01:00 UTC on 2019-03-31.
    ['2019-03-31T21:30:00Z', 'Europe/Berlin', '2019-03-31'],
    ['2019-03-31T22:30:00Z', 'Europe/Berlin', '2019-04-01'],
    // And back at 01:00 UTC on 2019-10-27.
    ['2019-10-26T22:30:00Z', 'Europe/Berlin', '2019-10-27'],
    ['2019-10-27T22:30:00Z', 'Europe/Berlin', '2019-10-27'],
    ['2019-10-27T23:30:00Z', 'Europe/Berlin', '2019-10-28'],
    ['2019-03-14T10:30:00Z', 'Pacific/Kiritimati', '2019-03-15'],
    ['2019-03-10T04:30:00Z', 'America/New_York', '2019-03-09'],
    ['2019-03-11T03:30:00Z', 'America/New_York', '2019-03-10'],
    ['2019-03-11T04:30:00Z', 'America/New_York', '2019-03-11'],
  ])('%s in %s is %s', (at, timeZone, day) => {
    expect(dayOf(file('a.mp4', at), timeZone)).toBe(`${day} recording`);
  });

  it('is set right by the folder’s camera clock', () => {
    const late = file('a.mp4', '2019-03-14T23:30:00Z', { clockOffsetMinutes: 45 });
    expect(dayOf(late)).toBe('2019-03-15 recording');
  });

  it('is that of the place where it was recorded, where the recording tells its offset', () => {
    const zoned = {
      epochMs: Date.parse('2019-03-14T23:30:00+11:00'),
      source: 'zoned' as const,
      offsetMinutes: 660,
    };
    expect(dayOf(file('a.mp4', null, { recordedAt: zoned, clockOffsetMinutes: 600 }), 'UTC')).toBe(
      '2019-03-14 recording',
    );
  });

  it('comes from the name, then a folder, then the file', () => {
    const filed = { epochMs: 0, source: 'file' as const, offsetMinutes: null };
    expect(dayOf(file('2018-01-02/20190314_101502.mp4', null, { recordedAt: filed }))).toBe(
      '2019-03-14 name',
    );
    expect(dayOf(file('2018-01-02 bass/x/a.mp4', null))).toBe('2018-01-02 folder');
    expect(dayOf(file('x/a.mp4', null))).toBe('2024-01-01 file');
  });

  it('of a file is that of its beginning: its date is that of its end', () => {
    const overnight = { modifiedAt: Date.parse('2024-01-02T00:05:00Z'), durationMs: 10 * minute };
    expect(dayOf(file('a.mp4', null, overnight))).toBe('2024-01-01 file');
  });

  it('is nowhere to be told where the file comes from before films, or from the future', () => {
    expect(dayOf(file('a.mp4', null, { modifiedAt: 0 }))).toBe('null nothing');
    expect(dayOf(file('a.mp4', null, { modifiedAt: now + 3 * 86_400_000 }))).toBe('null nothing');
    expect(dayOf(file('a.mp4', null, { modifiedAt: -1e15 }))).toBe('null nothing');
  });

  it('in the name is believed where the camera’s clock is days off, and that is told', () => {
    const wrong = file('2019-03-14 bass.mp4', '2008-01-01T00:10:00Z');
    expect(dated(wrong, wallClockOf('UTC'), latestDay)).toMatchObject({
      day: '2019-03-14',
      from: 'name',
      cameraDay: '2008-01-01',
    });
    expect(dayOf(file('2019-03-14 bass.mp4', '2019-03-15T00:10:00Z'))).toBe('2019-03-15 recording');
  });
});

describe('what becomes a job', () => {
  it('is a folder and a day where names say nothing', () => {
    const made = plan([
      file('2019/b.mp4', '2019-03-15T09:00:00Z'),
      file('2019/a.mp4', '2019-03-14T09:00:00Z'),
      file('2019/c.mp4', '2019-03-14T08:00:00Z'),
      file('DCIM/100MEDIA/d.mp4', '2019-03-14T09:00:00Z'),
      file('top.mp4', '2019-03-14T09:00:00Z'),
    ]);
    expect(inShort(made)).toEqual([
      '|2019-03-14|top.mp4',
      '2019|2019-03-14|c.mp4 a.mp4',
      'DCIM/100MEDIA|2019-03-14|d.mp4',
      '2019|2019-03-15|b.mp4',
    ]);
  });

  const severalDays = [
    file('bass rewire/Day 1/a.mp4', '2019-03-14T09:00:00Z'),
    file('bass rewire/Day 2/b.mp4', '2019-03-16T09:00:00Z'),
  ];
  it('is a folder with a name of its own, with those below that have none', () => {
    const [made, ...others] = plan(severalDays).jobs;
    expect(others).toEqual([]);
    expect(made).toMatchObject({
      ...{ home: 'bass rewire', title: 'Bass rewire', day: '2019-03-14', lastDay: '2019-03-16' },
      ...{ instrumentType: 'bass guitar', typeWords: 'bass', wholeFolder: true },
    });
  });

  it('is chosen by the rule', () => {
    expect(inShort(plan(severalDays, 'day'))).toEqual([
      'bass rewire|2019-03-14|a.mp4',
      'bass rewire|2019-03-16|b.mp4',
    ]);
    const unnamed = [file('x.mp4', '2019-03-14T09:00:00Z'), file('y.mp4', '2019-05-14T09:00:00Z')];
    expect(inShort(plan(unnamed, 'folder'))).toEqual(['|2019-03-14|x.mp4 y.mp4']);
  });

  it('is a day where a named folder is spread over more than 60 days', () => {
    const spread = (last: string) => [
      file('basses/a.mp4', '2019-03-14T09:00:00Z'),
      file('basses/b.mp4', last),
    ];
    expect(plan(spread('2019-05-13T09:00:00Z')).jobs).toHaveLength(1);
    expect(plan(spread('2019-05-14T09:00:00Z')).jobs).toHaveLength(2);
  });

  it('does not take its name from the folder that was chosen', () => {
    const files = [
      file('bass jobs/a.mp4', '2019-03-14T09:00:00Z'),
      file('bass jobs/b.mp4', '2019-03-15T09:00:00Z'),
    ];
    expect(plan(files, 'usual', [], 'bass jobs').jobs).toHaveLength(2);
  });

  it('goes on past midnight within an hour, as when a camera splits a long take', () => {
    const night = [
      file('a1.mp4', '2019-03-14T23:40:00Z', { durationMs: 20 * minute }),
      file('a2.mp4', '2019-03-15T00:00:00Z', { durationMs: 20 * minute }),
      file('b.mp4', '2019-03-15T01:20:00Z'),
      file('c.mp4', '2019-03-15T02:30:01Z'),
    ];
    expect(inShort(plan(night))).toEqual(['|2019-03-14|a1.mp4 a2.mp4 b.mp4', '|2019-03-15|c.mp4']);
  });

  it('holds split files that bear one time in the order that people count', () => {
    const at = '2019-03-14T09:00:00Z';
    const made = plan([file('clip10.mp4', at), file('clip2.mp4', at), file('clip1.mp4', at)]);
    expect(inShort(made)).toEqual(['|2019-03-14|clip1.mp4 clip2.mp4 clip10.mp4']);
  });

  it('may be without a day', () => {
    const [made] = plan([file('x.mp4', null, { modifiedAt: 0 })]).jobs;
    expect(made).toMatchObject({
      day: null,
      lastDay: null,
      title: 'Older recordings',
      instrumentType: 'other',
      wholeFolder: false,
    });
  });

  it('has a title by what its files share, where the folder has none', () => {
    const [made] = plan([file('2019/banjo head 1.mp4', '2019-03-14T09:00:00Z')]).jobs;
    expect(made).toMatchObject({ title: 'Banjo head', instrumentType: 'banjo' });
  });
});

describe('run again', () => {
  const earlier = [{ home: '2019', day: '2019-03-14', job: job(7) }];
  const taken = { job: job(7), here: true, wantsCaptions: false };
  const known = file('2019/a.mp4', '2019-03-14T09:00:00Z', { use: taken });

  it('only what is new is proposed, and joins the job of its folder and day', () => {
    const made = plan(
      [known, file('2019/b.mp4', '2019-03-14T10:00:00Z'), file('2019/c.mp4', '2019-03-15T10:00:00Z')],
      'usual',
      earlier,
    );
    expect(made.known).toBe(1);
    expect(made.jobs.map(({ joins, takes }) => [joins?.number, takes.map(({ name }) => name)])).toEqual([
      [7, ['b.mp4']],
      [undefined, ['c.mp4']],
    ]);
  });

  it.each(jobRules)('by the rule %s nothing is left once all are takes', (rule) => {
    expect(plan([known], rule, earlier).jobs).toEqual([]);
  });

  it('joins the job of a whole folder whatever the day', () => {
    const whole = [{ home: 'bass rewire', day: null, job: job(3) }];
    const made = plan([file('bass rewire/z.mp4', '2021-01-01T10:00:00Z')], 'day', whole);
    expect(made.jobs[0]?.joins?.number).toBe(3);
  });

  it('leaves out what was moved, renamed or copied, and says where it is', () => {
    const moved = file('new/a.mp4', '2019-03-14T09:00:00Z', { use: { ...taken, here: false } });
    const twin = { fingerprint: 'same' };
    const made = plan([
      moved,
      file('x/1.mp4', '2019-03-14T09:00:00Z', twin),
      file('y/2.mp4', '2019-03-14T09:00:00Z', twin),
    ]);
    expect(inShort(made)).toEqual(['x|2019-03-14|1.mp4']);
    expect(made.elsewhere.map(({ path, job }) => [path, job?.number])).toEqual([
      ['new/a.mp4', 7],
      ['y/2.mp4', undefined],
    ]);
  });

  it('puts in captions that came beside a take', () => {
    const wanting = { ...known, captions: ['a.vtt'], use: { ...taken, wantsCaptions: true } };
    const made = plan([wanting, file('2019/b.mp4', '2019-03-14T10:00:00Z')], 'usual', earlier);
    expect(made.jobs).toHaveLength(1);
    expect(made.jobs[0]?.joins?.number).toBe(7);
    expect(made.jobs[0]?.takes.map(({ name, captionsOnly }) => [name, captionsOnly])).toEqual([
      ['a.mp4', true],
      ['b.mp4', false],
    ]);
  });

  it('leaves out what cannot be read, and says why', () => {
    const made = plan([
      file('bad.mp4', null, { unreadable: 'It is empty. Copy it again.', fingerprint: null }),
    ]);
    expect(made).toMatchObject({
      jobs: [],
      unreadable: [{ path: 'bad.mp4', why: 'It is empty. Copy it again.' }],
    });
  });
});

it('gives every job a key of its own, and every new recording one place', () => {
  const files = Array.from({ length: 400 }, (_, index) =>
    file(
      `${index % 7}/${index % 3 === 0 ? 'bass ' : ''}${index % 5}/${index}.mp4`,
      new Date(Date.UTC(2019, 0, 1 + (index % 50), 9)).toISOString(),
    ),
  );
  for (const rule of jobRules) {
    const { jobs } = plan(files, rule);
    expect(new Set(jobs.map(({ key }) => key)).size).toBe(jobs.length);
    expect(jobs.flatMap(({ takes }) => takes.map(({ path }) => path)).sort()).toEqual(
      files.map(({ path }) => path).sort(),
    );
  }
});
