import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate, runJob } from '../../index.ts';
import type { SeasonBalance } from './result.ts';

const edited = (project: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(project, { device: 'test', seq: 1, path, before: valueAt(project, path), after }).value;

/** The plan with the dampers found. */
function balanced(project: Project) {
  const { wanted } = evaluate(project, {});
  const job = wanted.find((j) => j.kind === 'air/balance');
  if (!job) throw new Error('the demo asks for its balance');
  const { plan, wanted: left } = evaluate(project, {
    [job.key]: runJob(job, { blob: () => undefined, tell: () => undefined }),
  });
  expect(left.some((j) => j.key === job.key)).toBe(false);
  const balance = plan.trades.air?.balance;
  if (!balance?.ok || !balance.value[balance.value.governs].ok) throw new Error('the demo can be balanced');
  const season = balance.value[balance.value.governs] as { value: SeasonBalance };
  return { plan, balance: balance.value, season: season.value };
}
const partsOf = (s: SeasonBalance, key: 'drawn' | 'balanced') => s.rooms.map((r) => r[key] ?? 0);
const finding = ({ plan }: ReturnType<typeof balanced>) => plan.findings.find((f) => f.id === 'air/balance');

describe('a house’s dampers', () => {
  const old = balanced(demo('juniper-flat'));
  const island = balanced(demo('tern-ledge'));

  it('bring every room of the old ranch house to its share in the heating season, which governs', () => {
    expect(old.balance.governs).toBe('heating');
    for (const part of partsOf(old.season, 'balanced')) expect(Math.abs(part - 1)).toBeLessThan(1e-6);
    expect(Math.min(...partsOf(old.season, 'drawn'))).toBeLessThan(0.9);
    expect(old.season.flow).toBeLessThan(old.balance.openFlow);
  });

  it('bring a room as far as the blower’s table lets them where its duct is too small, and say so', () => {
    const table = island.plan.trades.air?.model.ok ? island.plan.trades.air.model.value.blower.points : [];
    expect(island.season.limited).toBe(true);
    expect(island.season.flow / (table[0]?.flow ?? 0)).toBeCloseTo(1, 3);
    expect(island.season.flow).toBeGreaterThanOrEqual(table[0]?.flow ?? 1);
    const work = island.season.rooms.find((r) => r.room === 'work');
    expect(work?.balanced).toBeLessThan(1);
    expect(work?.balanced).toBeGreaterThan(work?.drawn ?? 1);
    // All others stand alike among themselves.
    const others = island.season.rooms.flatMap((r) => (r.room === 'work' ? [] : [r.balanced ?? 0]));
    expect(Math.max(...others) - Math.min(...others)).toBeLessThan(1e-6);
    expect(finding(island)?.mend).toContain('too small');
  });

  it('one who drew them at the angles found has the shares found, to what a table and a hand allow', () => {
    const drawn = old.season.settings.reduce(
      (p, { place, angle }) =>
        edited(p, ['routes', 'ducts', 'sections', place.id, 'fittings', 'zz-damper'], {
          kind: 'damper',
          angle: { value: angle ?? 0, known: 'measured' },
        }),
      demo('juniper-flat'),
    );
    const again = balanced(drawn);
    for (const part of partsOf(again.season, 'drawn')) expect(Math.abs(part - 1)).toBeLessThan(1e-6);
    expect(again.season.flow / old.season.flow).toBeCloseTo(1, 7);
    expect(finding(old)?.status).toBe('fails');
    expect(finding(again)?.status).toBe('ok');
  });

  it('are in the order list by size, in the work plan, and in the readings', () => {
    const { materials, tasks, readings } = old.plan;
    const bought = materials.filter((m) => m.id.startsWith('air/damper:'));
    expect(bought.reduce((a, m) => a + m.amount, 0)).toBe(5);
    expect(bought.map((m) => m.id)).toEqual(['air/damper:102', 'air/damper:152', 'air/damper:203']);
    expect(tasks.map((t) => t.id)).toEqual(expect.arrayContaining(['air/dampers', 'air/balance']));
    const expected = readings.filter((r) => r.id.startsWith('air/balanced:'));
    expect(expected).toHaveLength(5);
    const sum = expected.reduce((a, r) => a + r.expected, 0);
    for (const room of old.season.rooms) {
      const reading = expected.find((r) => r.id === `air/balanced:reg-${room.room}`);
      // Warm air in the supply alone shifts no share: all branches thin out alike.
      expect((reading?.expected ?? 0) / sum / room.share).toBeCloseTo(1, 1);
    }
  });

  it('wait for their job without a word of doubt', () => {
    const { plan } = evaluate(demo('juniper-flat'), {});
    expect(plan.findings.find((f) => f.id === 'air/balance')).toMatchObject({ status: 'unknown', because: 'pending' });
    expect(plan.readings.some((r) => r.id.startsWith('air/balanced:'))).toBe(false);
  });
});
