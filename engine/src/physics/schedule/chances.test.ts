import { describe, expect, it } from 'vitest';
import { atShare, quantilesOf } from './durations.ts';
import { chanceBy, chancesOf, meanOf, planWork, varianceOf, type WorkPiece, type WorkSpec } from './index.ts';

const chain = (lengths: readonly WorkPiece['minutes'][], rest: Partial<WorkSpec> = {}): WorkSpec => ({
  horizon: 4000,
  step: 1,
  resources: [{ id: 'people', units: 1 }],
  calendars: [],
  tasks: lengths.map((minutes, i) => ({
    id: `t${i}`,
    pieces: [{ id: 'all', minutes }],
    needs: [{ resource: 'people', units: 1 }],
    after: i > 0 ? [{ task: `t${i - 1}` }] : [],
  })),
  ...rest,
});

const lived = (spec: WorkSpec, lives = 4000) => {
  const found = chancesOf(spec, planWork(spec).plan?.pieces ?? [], { lives });
  if (!found) throw new Error('a plan has its chances');
  return found;
};
const mean = (x: Float64Array) => x.reduce((a, b) => a + b, 0) / x.length;

describe('three points', () => {
  it.each([
    [{ low: 2, likely: 3, high: 7 }, 3.5, 0.694444],
    [{ low: 1, likely: 2, high: 3 }, 2, 0.111111],
  ])('%j have mean %d and variance %d', (points, m, v) => {
    expect(meanOf(points)).toBeCloseTo(m, 12);
    expect(varianceOf(points)).toBeCloseTo(v, 6);
  });

  it('the drawn lengths lie between the ends, with the mean planned and the variance of that beta distribution', () => {
    for (const points of [
      { low: 2, likely: 3, high: 7 },
      { low: 10, likely: 10, high: 60 },
      { low: 5, likely: 9, high: 9 },
    ]) {
      const q = quantilesOf(points);
      const drawn = Float64Array.from({ length: 20000 }, (_, i) => atShare(q, (i + 0.5) / 20000));
      const m = meanOf(points);
      const width = points.high - points.low;
      expect(mean(drawn)).toBeCloseTo(m, 1);
      // (mean - low)(high - mean) / 7: of a beta distribution whose shapes sum to 6.
      const variance = mean(drawn.map((x) => (x - m) ** 2));
      expect(variance / (((m - points.low) * (points.high - m)) / 7)).toBeCloseTo(1, 1);
      expect(Math.min(...drawn)).toBeGreaterThanOrEqual(points.low);
      expect(Math.max(...drawn)).toBeLessThanOrEqual(points.high + 1e-9 * width);
    }
  });
});

describe('the chances of a plan', () => {
  it('of certain lengths are the plan', () => {
    const found = lived(chain([30, 40]), 50);
    expect([...new Set(found.ends)]).toEqual([70]);
    expect(found.pieces.map((p) => [p.decides, p.overruns])).toEqual([
      [1, 0],
      [1, 0],
    ]);
  });

  it('of a chain have the sum of the means and of the variances', () => {
    const points = { low: 60, likely: 120, high: 300 };
    const { ends } = lived(chain(Array.from({ length: 16 }, () => points)));
    const m = 16 * meanOf(points);
    const v = (16 * (meanOf(points) - 60) * (300 - meanOf(points))) / 7;
    expect(Math.abs(mean(ends) - m)).toBeLessThan(4 * Math.sqrt(v / 4000) + 1);
    expect(mean(ends.map((x) => (x - m) ** 2)) / v).toBeCloseTo(1, 0);
    // The sum of many is close to normal: half by the mean, five in six by one deviation more.
    expect(chanceBy({ ends, pieces: [], deadlines: [], inTime: [] }, m)).toBeCloseTo(0.5, 1);
    expect(chanceBy({ ends, pieces: [], deadlines: [], inTime: [] }, m + Math.sqrt(v))).toBeCloseTo(0.84, 1);
  });

  it('name what decides: of two at once the one that nearly always ends last', () => {
    const spec: WorkSpec = {
      ...chain([
        { low: 100, likely: 120, high: 140 },
        { low: 20, likely: 60, high: 130 },
      ]),
      resources: [{ id: 'people', units: 2 }],
    };
    const both = { ...spec, tasks: spec.tasks.map((t) => ({ ...t, after: [] })) };
    const [long, short] = lived(both).pieces;
    expect(long?.decides).toBeGreaterThan(0.95);
    expect((long?.decides ?? 0) + (short?.decides ?? 0)).toBeCloseTo(1, 9);
  });

  it('say how often a piece does not fit its window, and a deadline is kept', () => {
    const points = { low: 20, likely: 35, high: 80 };
    const there = [{ from: 0, to: 41 }];
    const spec = chain([points], { resources: [{ id: 'people', units: 1, there }] });
    const found = lived({ ...spec, tasks: spec.tasks.map((t) => ({ ...t, deadline: 41 })) });
    const q = quantilesOf(points);
    const share =
      Array.from({ length: 1000 }, (_, i) => atShare(q, (i + 0.5) / 1000)).filter((x) => x > 41.5).length / 1000;
    expect(found.pieces[0]?.overruns).toBeCloseTo(share, 1);
    expect(found.deadlines[0]?.chance).toBeCloseTo(1 - share, 1);
  });

  it('are the same for the same seed', () => {
    const spec = chain([{ low: 60, likely: 120, high: 300 }]);
    expect(lived(spec, 100)).toEqual(lived(spec, 100));
  });
});
