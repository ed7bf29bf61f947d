import { describe, expect, it } from 'vitest';
import { noteSections } from '@/lib/handover/notes';
import { planWiring } from '@/lib/wiring';
import type { TraceView } from '@/shared/traces';
import type { TraceInput } from '@/shared/wiring';
import { kick, neck, pair } from '../wiring/set/traces';
import { at, factsOf, fullRecord, traceView } from './notes-job';

/** Three conductors, two coils that are linked inside (common practice, no source). */
const linked: TraceInput = {
  subject: 'bridge pickup',
  conductors: ['red', 'white', 'black'],
  shield: true,
  readings: [
    pair('1', ['red', 'white'], 4000),
    pair('2', ['white', 'black'], 4100),
    pair('3', ['red', 'black'], 8100),
    kick('k', ['red', 'white'], 'slug'),
  ],
};

const wiringOf = (...traces: TraceView[]) =>
  noteSections(factsOf(fullRecord(), traces), { videoAddress: null }).find(({ id }) => id === 'wiring');

/** By the signs alone: the role that each conductor's line comes down to, by its letter code. */
function followed(drawing: string): Record<string, string> {
  const rows = drawing.split('\n');
  return Object.fromEntries(
    rows.flatMap((row, index) => {
      const code = /\*- (\S+)/.exec(row)?.[1];
      if (code === undefined) return [];
      const column = row.lastIndexOf('o');
      const below = rows.slice(index + 1).map((other) => other.charAt(column));
      const end = below.indexOf('+');
      expect(below.slice(0, end).every((sign) => sign === '|' || sign === 'o')).toBe(true);
      return [[code, /-+ (\w+):/.exec(rows[index + 1 + end] ?? '')?.[1] ?? '']];
    }),
  );
}

describe('the drawing in letters', () => {
  const code: Record<string, string> = { red: 'RD', white: 'WH', green: 'GN', black: 'BK', shield: 'SHIELD' };
  const plansOf = (input: TraceInput) => planWiring(input).plans.map(({ id }) => [id, input] as const);

  it.each([...plansOf(neck()), ...plansOf(linked)])(
    'of “%s” leads every conductor where it goes',
    (id, input) => {
      const view = traceView(id, input);
      const wanted = (view.outcomes[0]?.outcome.lines ?? []).flatMap(({ role, ends }) =>
        ends.map((end) => [code[end], role]),
      );
      const [drawing] = wiringOf(view)?.drawings ?? [];
      expect(followed(drawing?.text ?? '')).toEqual(Object.fromEntries(wanted));
    },
  );

  it('shows coils between their ends, and their positive ends', () => {
    const rows = wiringOf(traceView('series', linked))?.drawings[0]?.text.split('\n') ?? [];
    expect(rows.slice(0, 5).map((row) => row.slice(0, 35).trim())).toEqual([
      '*- RD    +',
      'slug coil, 4 kΩ (',
      '*- WH',
      'coil white/black, 4.1 kΩ (',
      '*- BK',
    ]);
  });
});

describe('the wiring section', () => {
  it('has a head for each pickup where there are several, and tells what was only traced', () => {
    const traced = { ...traceView('series', neck()), outcomes: [] };
    const markdown = wiringOf(traceView('series', linked), traced)?.markdown ?? '';
    expect(markdown.match(/^### .+$/gm)).toEqual(['### Bridge pickup', '### Neck']);
    expect(markdown).toContain('I traced the neck and joined nothing yet. This follows from what I read:');
    expect(markdown).toContain('- Green is the positive end under the screw row. (Measured.)');
    expect(markdown.match(/drawing/g)).toHaveLength(1);
  });

  it('tells the newest joint, and that there was another before it', () => {
    const view = traceView('series', neck());
    const [outcome] = view.outcomes;
    if (!outcome) throw new Error('no outcome');
    const older = { ...outcome, ...at(2, 10_000), outcome: { ...outcome.outcome, title: 'Parallel' } };
    const markdown = wiringOf({ ...view, outcomes: [outcome, older] })?.markdown ?? '';
    expect(markdown).toContain('I joined the neck like this in the end: Series (1:31).');
    expect(markdown).not.toContain('Parallel');
  });

  it('does not draw by a plan or conductors that the trace no longer has', () => {
    const view = traceView('series', neck());
    expect(wiringOf({ ...view, plans: [] })).toMatchObject({ drawings: [] });
    const other = structuredClone(view);
    other.outcomes[0]?.outcome.lines[0]?.ends.push('violet');
    const section = wiringOf(other);
    expect(section?.drawings).toEqual([]);
    expect(section?.markdown).toContain('| Hot | red (RD), violet (VT) |');
  });

  it('does not hold the total of another plan against what was joined', () => {
    const view = traceView('series', neck());
    expect(wiringOf(view)?.markdown).toContain('It passes.');
    const changed = { ...view, worksheet: { ...view.worksheet, planId: 'parallel' } };
    expect(wiringOf(changed)?.markdown).not.toContain('I held the total');
  });
});

describe('the check at the jack', () => {
  const measured = (verdict: 'pass' | 'fail', text: string) => {
    const facts = factsOf(fullRecord());
    const check = {
      ...{
        readingId: null,
        key: 'on',
        setting: { position: 'on', thrown: [], down: [] },
        label: 'on',
        verdict,
      },
      ...{
        measuredOhms: 7950,
        expected: { ohms: 7950, leastOhms: 7000, mostOhms: 9000 },
        uncertaintyOhms: 90,
        text,
      },
    };
    const judgement = {
      ...{ verdict, text, checks: [check], explanations: [], notRuledOut: [], missing: [], invisible: [] },
      ...{ assumptions: [], cautions: [] },
    };
    const sections = noteSections({ ...facts, jack: { ...facts.jack, judgement } }, { videoAddress: null });
    return sections.find(({ id }) => id === 'measured')?.markdown;
  };

  it('is told as it came out', () => {
    expect(measured('pass', 'Every setting fits.')).toContain(
      'I checked the whole at the jack. Every setting fits.',
    );
    expect(measured('fail', '"on" does not fit, says Marla.')).toContain(
      '"on" does not fit, says the returning client.',
    );
  });
});
