import { describe, expect, it } from 'vitest';
import { learnUnit } from '../../commissioning/logs/learnUnit.ts';
import { logDays } from '../../commissioning/logs/logDays.ts';
import type { HouseLog } from '../../commissioning/logs/logHours.ts';
import type { UnitModel, UnitRow, UnitSpeed } from '../../equipment/result.ts';
import { fraction, seeded } from '../../physics/schedule/seeded.ts';
import { expectedUnit } from './expectedUnit.ts';

const row = (speed: UnitSpeed, outdoor: number, capacity: number, power: number): UnitRow => ({
  ...{ mode: 'heating', speed, outdoor, indoor: 21, capacity, power, defrostCounted: false },
});
/** An invented unit of three speeds. */
const model: UnitModel = {
  id: 'invented',
  name: 'Invented',
  rows: [
    ...[row('least', -15, 1900, 720), row('least', -8, 2200, 700), row('least', 8, 2900, 640)],
    ...[row('rated', -15, 4700, 2050), row('rated', -8, 5400, 1980), row('rated', 8, 7000, 1750)],
    ...[row('most', -15, 6100, 3200), row('most', -8, 7200, 3150), row('most', 8, 9300, 2900)],
  ],
};
const planned = expectedUnit({ model, pressure: 101_325, standby: 15 });

const lineAt = (speed: UnitSpeed, t: number, of: (r: UnitRow) => number): number => {
  const [a, b, c] = model.rows.filter((r) => r.speed === speed);
  if (!a || !b || !c) throw new Error(speed);
  const [p, q] = t < b.outdoor ? [a, b] : [b, c];
  const share = Math.max(0, Math.min(1, (t - p.outdoor) / (q.outdoor - p.outdoor)));
  return of(p) + share * (of(q) - of(p));
};

/** What a real one differs in from the sheet and from what the plan counts beside it. */
type Real = {
  readonly draw: number;
  readonly frost: number;
  readonly frostWide: number;
  readonly starts: number;
  readonly standby: number;
};

/** W drawn for a moment's heat, run anew and not by the plan's own code: speeds, frost round freezing, starts, standby. */
function drawn(real: Real, t: number, heat: number): number {
  const frosty = t < 1.7 ? 1 - (1.7 - t) / real.frostWide : 1 - (t - 1.7) / 5.5;
  const iced = real.frost * Math.max(0, frosty);
  const at = (speed: UnitSpeed) => ({
    heat: lineAt(speed, t, (r) => r.capacity) * (1 - iced),
    power: lineAt(speed, t, (r) => r.power) * (1 - 0.15 * iced),
  });
  const [low, middle, high] = [at('least'), at('rated'), at('most')];
  const between = (a: typeof low, b: typeof low): number =>
    a.power + ((heat - a.heat) / (b.heat - a.heat)) * (b.power - a.power);
  const share = heat / low.heat;
  const compressor =
    share < 1
      ? (low.power * share) / (1 - real.starts * (1 - share))
      : heat < middle.heat
        ? between(low, middle)
        : heat < high.heat
          ? between(middle, high)
          : high.power + heat - high.heat;
  return real.draw * compressor + real.standby;
}

/** Eight weeks of a house whose heat follows weather, sun and its people, in steps of ten minutes; meters with their errors. */
function logOf(seed: number): { log: HouseLog; draw: number } {
  const r = seeded(seed);
  const within = (low: number, high: number): number => low + (high - low) * fraction(r);
  const normal = (): number => Math.sqrt(-2 * Math.log(fraction(r))) * Math.cos(2 * Math.PI * fraction(r));
  const draw = within(0.95, 1.15);
  const frost = { frost: within(0.04, 0.16), frostWide: within(6, 14) };
  const real = { draw, ...frost, starts: within(0.1, 0.35), standby: within(5, 25) };
  const [gain, warm] = [1 + 0.03 * normal(), 0.4 * normal()];
  const loss = within(130, 230);
  const n = 24 * 56;
  const column = (): Float64Array => new Float64Array(n);
  const [outdoor, heat, power] = [column(), column(), column()];
  let [front, gust] = [0, 0];
  for (let h = 0; h < n; h++) {
    front = 0.98 * front + 0.2 * normal();
    gust = 0.7 * gust + 0.7 * normal();
    const t = -2 + 5 * front - 3 * Math.cos(((h - 3) * Math.PI) / 12);
    const sun = Math.max(0, Math.sin(((h % 24) - 7) * (Math.PI / 10))) * 1500 * Math.abs(Math.sin(h / 40));
    const [q, p] = [0, 1, 2, 3, 4, 5].reduce<readonly [number, number]>(
      ([sumQ, sumP]) => {
        const now = Math.max(60, (loss * (20 - t) - sun - 500 + 300 * gust) * (1 + 0.15 * normal()));
        return [sumQ + now / 6, sumP + drawn(real, t, now) / 6];
      },
      [0, 0],
    );
    outdoor[h] = t + warm + 0.2 * normal();
    heat[h] = q * gain * (1 + 0.02 * normal());
    power[h] = p * (1 + 0.01 * normal());
  }
  const indoor = column().fill(20);
  return { log: { first: 24 * 20_000, outdoor, indoor, ends: indoor, heat, heatFrom: 'meter', power }, draw };
}

describe('what a unit draws, by logs of 160 changed units whose meters are off', () => {
  const all = Array.from({ length: 160 }, (_, k) => {
    const { log, draw } = logOf(k + 1);
    const days = logDays(log);
    const found = learnUnit(log, days, planned);
    if (!found) throw new Error('not found');
    const byDays = Array.from(days.heat, (q, i) => [days.power?.[i] ?? 0, planned.power(days.outdoor[i] ?? 0, q)]);
    const sum = (k: 0 | 1): number => byDays.reduce((a, x) => a + (x[k] ?? 0), 0);
    return { draw, found, byDays: sum(0) / sum(1) };
  });
  const mean = (of: (x: (typeof all)[number]) => number): number => all.reduce((a, x) => a + of(x), 0) / all.length;

  it('is told without leaning to one side by more than a hundredth and a half', () => {
    expect(Math.abs(mean((x) => x.found.likely / x.draw) - 1)).toBeLessThan(0.015);
  });

  it('lies in its range in nine of ten, and in no more than all', () => {
    const held = mean((x) => (x.found.low <= x.draw && x.draw <= x.found.high ? 1 : 0));
    expect(held).toBeGreaterThanOrEqual(0.85);
    expect(held).toBeLessThan(0.99);
  });

  it('would be overstated where a day’s mean heat were looked up instead of its hours’', () => {
    expect(mean((x) => x.byDays / x.draw) - mean((x) => x.found.likely / x.draw)).toBeGreaterThan(0.015);
  });
});
