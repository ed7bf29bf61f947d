import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

const run = (...words: string[]) => {
  const { status, stdout, stderr } = spawnSync('npx', ['--no-install', ...words], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  return { status, stdout, told: `${stdout}\n${stderr}`.slice(-6000) };
};

const cruiseSchema = z.object({
  summary: z.object({
    totalCruised: z.number(),
    totalDependenciesCruised: z.number(),
    violations: z.array(z.object({ from: z.string(), to: z.string(), rule: z.object({ name: z.string() }) })),
  }),
});

describe('the house', { timeout: 240_000 }, () => {
  it('has arrows one way only: app → lib → db → shared, through the doors', () => {
    const { stdout, told } = run(
      'depcruise',
      '--config',
      '.dependency-cruiser.cjs',
      '--output-type',
      'json',
      'app',
      'lib',
      'db',
      'shared',
      'server.ts',
    );
    const { summary } = cruiseSchema.parse(JSON.parse(stdout || '{}'), { error: () => told });
    // A cruiser that reads nothing finds nothing: it must have seen the house.
    expect(summary.totalCruised).toBeGreaterThan(80);
    expect(summary.totalDependenciesCruised).toBeGreaterThan(150);
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`)).toEqual([]);
  });

  it('holds its types', () => {
    const { status, told } = run('tsc', '--noEmit', '--incremental', 'false');
    expect(status, told).toBe(0);
  });

  it('is tidy', () => {
    const { status, told } = run('biome', 'check', '--max-diagnostics=20', '.');
    expect(status, told).toBe(0);
  });

  it('holds nothing that nobody uses', () => {
    const { status, told } = run('knip', '--no-progress');
    expect(status, told).toBe(0);
  });
});
