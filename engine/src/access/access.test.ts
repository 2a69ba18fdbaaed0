import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding, runJob } from '../index.ts';
import {
  anchorPull,
  drawUp,
  faceSpare,
  holdBack,
  lowerShare,
  neverThrough,
  ownFrequency,
  shakenThrough,
  widthForTurned,
} from './kernels/index.ts';

const n = (value: number) => ({ value, known: 'measured' });

type Entries = { [key: string]: Entries | string | { value: number; known: string } | undefined };

/** Tern Ledge with entries changed, by their dotted path; undefined takes one out. */
function changed(changes: Readonly<Record<string, unknown>>): Project {
  const project = structuredClone(demo('tern-ledge')) as unknown as Entries;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    let at = project;
    for (const key of keys) {
      at[key] ??= {};
      at = at[key] as Entries;
    }
    if (value === undefined) delete at[last];
    else at[last] = value as Entries;
  }
  return project as unknown as Project;
}
const all = (changes: Readonly<Record<string, unknown>>): readonly Finding[] =>
  evaluate(changed(changes), {}).plan.findings.filter((f) => f.trade === 'access');
const found = (changes: Readonly<Record<string, unknown>>, id: string): Finding => {
  const finding = all(changes).find((f) => f.id === `access/${id}`);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};
/** The same once its passages are planned. */
function planned(changes: Readonly<Record<string, unknown>>, id: string): Finding {
  const project = changed(changes);
  const job = evaluate(project, {}).wanted.find((j) => j.kind === 'access/passage');
  if (!job) throw new Error('no passage to plan');
  const results = { [job.key]: runJob(job, { blob: () => undefined, tell: () => {} }) };
  const finding = evaluate(project, results).plan.findings.find((f) => f.id === `access/${id}`);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
}
const hatch = 'routes.passages.hatch';
const lifting = 'routes.access.lifting';

describe('what passes', () => {
  // The handler's smallest face is 0.77 by 0.30 m.
  it('a hatch a hair too short fails by the hair, and one with room passes', () => {
    const short = found({}, 'passes:hatch/handler');
    expect(short.status).toBe('fails');
    expect(short.value).toMatchObject({ likely: expect.closeTo(0.762 - 0.77, 12) });
    expect(short.caution).toMatch(/engineer/);
    expect(found({ [`${hatch}.height`]: n(0.77 + 0.013) }, 'passes:hatch/handler').status).toBe('ok');
    expect(found({ [`${hatch}.height`]: n(0.77 + 0.005) }, 'passes:hatch/handler').status).toBe('tight');
  });

  it('a tape that may be wrong by more than the spare makes it tight', () => {
    const wide = { value: { low: 0.765, likely: 0.79, high: 0.8 }, known: 'measured' };
    expect(found({ [`${hatch}.height`]: wide }, 'passes:hatch/handler').status).toBe('tight');
  });

  it('headroom: enough, too little for the box at all, and planned between', () => {
    const large = { [`${hatch}.height`]: n(0.9) };
    const id = 'headroom:hatch/handler';
    expect(found({ ...large, [`${hatch}.headroom`]: n(1.35) }, id).status).toBe('ok');
    expect(found({ ...large, [`${hatch}.headroom`]: n(0.25) }, id).status).toBe('fails');
    const low = { ...large, [`${hatch}.headroom`]: n(0.7) };
    const between = found(low, id);
    expect([between.status, between.because]).toEqual(['unknown', 'pending']);
    const up = planned(low, id);
    expect([up.status, up.source]).toEqual(['ok', 'access.motion']);
    expect(planned({ ...large, [`${hatch}.headroom`]: n(0.6) }, id).status).toBe('fails');
  });

  it('a corner turns what a straight way lets through', () => {
    const narrow = { 'routes.passages.way.height': n(0.5), 'routes.passages.way.width': n(0.8) };
    expect(found(narrow, 'passes:way/handler').status).toBe('ok');
    const corner = { ...narrow, 'routes.passages.way.after': n(0.8) };
    expect(found(corner, 'passes:way/handler')).toMatchObject({ status: 'unknown', because: 'pending' });
    expect(planned(corner, 'passes:way/handler').status).toBe('fails');
    // With one end up it is shorter from above: what the ceiling lets.
    const high = { ...corner, 'routes.passages.way.height': n(1.2) };
    expect(planned(high, 'passes:way/handler').status).toBe('ok');
  });

  it('a face turned by brute force takes the width that the closed form says', () => {
    for (const [p, q, a] of [
      [1.1, 0.1, 1],
      [0.8, 0.05, 0.762],
      [31, 5, 30],
    ] as const) {
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i <= 200_000; i++) {
        const t = (i / 200_000) * (Math.PI / 2);
        if (p * Math.cos(t) + q * Math.sin(t) <= a) least = Math.min(least, p * Math.sin(t) + q * Math.cos(t));
      }
      expect(widthForTurned(p, q, a) / least).toBeCloseTo(1, 4);
    }
  });

  it('nothing that passes is ever called impossible', () => {
    for (let i = 0; i < 2000; i++) {
      const at = (k: number): number => 0.1 + ((i * 7919 * k) % 1009) / 1009;
      const box = { width: at(1), depth: at(3), height: at(5) };
      const opening = [at(11), at(13)] as const;
      const passes = faceSpare([box.width, box.depth], opening).spare >= 0;
      if (passes) expect(neverThrough(box, opening)).toBe(false);
    }
  });
});

describe('who lifts, what carries, how hot', () => {
  it('what one may lift grows with people by the shares of the standard, and not one is let off alone', () => {
    const most = (people: number): number =>
      found({ [`${lifting}.people`]: n(people) }, 'carry:outdoorUnit').limit?.max ?? 0;
    expect(most(2) / most(1)).toBeCloseTo(4 / 3, 12);
    expect(most(4) / most(1)).toBeCloseTo(2, 12);
    expect(found({ [`${lifting}.people`]: n(1) }, 'carry:outdoorUnit').status).toBe('fails');
  });

  it.each(['ladder', 'hands', 'stair'])('%s: outside the equation, with its caution', (up) => {
    const raise = found({ [`${lifting}.up`]: up }, 'raise');
    expect([raise.status, raise.because]).toEqual(['unknown', 'out-of-range']);
    expect(raise.caution).toMatch(/ladder/);
  });

  it('a weak anchor fails at five times load and pull', () => {
    const least = found({}, 'anchor').limit?.min ?? 0;
    expect(least).toBeGreaterThan(5 * 36);
    expect(found({ [`${lifting}.anchor`]: n(least - 1) }, 'anchor').status).toBe('fails');
  });

  it('deeper joists carry it, shallow ones send you to an engineer', () => {
    const joist = (size: string) => found({ 'routes.access.platform.joist': size }, 'joists');
    expect(joist('2x4').status).toBe('fails');
    expect(joist('2x12').status).toBe('ok');
    expect(joist('2x4').mend).toMatch(/structural engineer/);
  });

  it('dawn leaves more of an hour than the hot hour; the cold season asks nothing', () => {
    const minutes = (time: string): number => Number(found({ 'routes.access.heat.time': time }, 'heat').value);
    expect(minutes('dawn')).toBeGreaterThan(minutes('any'));
    expect(all({ 'routes.access.heat.time': 'cold' }).some((f) => f.id === 'access/heat')).toBe(false);
  });
});

describe('on knees, on steps, up a ramp, alone', () => {
  it('on knees nothing is claimed, and the caution stands', () => {
    const carry = found({ [`${lifting}.pose`]: 'kneeling' }, 'carry:outdoorUnit');
    expect([carry.status, carry.because]).toEqual(['unknown', 'out-of-range']);
    expect(carry.what).toMatch(/kneel/);
    expect(carry.caution).toMatch(/alone/);
  });

  it('one person alone is refused what two may do', () => {
    expect(found({ [`${lifting}.people`]: n(1) }, 'alone').status).toBe('fails');
    expect(found({}, 'alone').status).toBe('ok');
  });

  it('a ladder counts person, tools and unit; a stair loads the lower one more', () => {
    const ladder = found({ [`${lifting}.up`]: 'ladder', [`${lifting}.ladder`]: n(136) }, 'ladder');
    const mass = Number(
      evaluate(demo('tern-ledge'), {}).plan.findings.find((f) => f.id === 'access/carry:outdoorUnit')?.value,
    );
    expect(mass).toBeGreaterThan(0);
    expect(Number(ladder.value)).toBeGreaterThan(108);
    expect(found({ [`${lifting}.up`]: 'stair' }, 'raise').what).toMatch(/lower of two carries/);
    expect(lowerShare(1, 0, 40)).toBe(0.5);
    expect(lowerShare(1, 0.25, 45)).toBeCloseTo(0.75, 12);
  });

  it('a ramp takes less pull than the weight, friction more; what friction holds does not slide back', () => {
    const ramp = { mass: 60, slope: 30, friction: 0 };
    expect(drawUp(ramp)).toBeCloseTo((60 * 9.80665) / 2, 9);
    expect(drawUp({ ...ramp, slope: 90, friction: 5 })).toBeCloseTo(60 * 9.80665, 6);
    // Up and back bracket the weight's own part along the slope by the same friction.
    const rough = { ...ramp, friction: 0.2 };
    expect((drawUp(rough) + holdBack(rough)) / 2).toBeCloseTo(drawUp(ramp), 9);
    expect(holdBack({ ...ramp, friction: Math.tan(Math.PI / 6) })).toBeCloseTo(0, 9);
    const outdoor = 'routes.access.outdoor';
    const pull = (slope: number) =>
      (found({ [`${outdoor}.up`]: 'ramp', [`${outdoor}.slope`]: n(slope) }, 'outdoor-pull').value as { likely: number })
        .likely;
    expect(pull(45)).toBeGreaterThan(pull(20));
    expect(found({ [`${outdoor}.up`]: 'ramp', [`${outdoor}.anchor`]: n(60) }, 'outdoor-anchor').status).toBe('fails');
  });

  it('a ramp is cut: two planks as long as height over sine, battens as wide as both; without a height it is counted', () => {
    const outdoor = 'routes.access.outdoor';
    const lines = (z: unknown) =>
      evaluate(
        changed({ [`${outdoor}.up`]: 'ramp', [`${outdoor}.slope`]: n(30), 'routes.lineset.place.z': z }),
        {},
      ).plan.materials.filter((l) => l.id.startsWith('access/timber:2x10') || l.id.startsWith('access/ramp'));
    // 1.2 m up at 30°: 2.4 m; battens at 0, 0.6, 1.2, 1.8 and 2.4 m.
    const [planks, ...others] = lines(n(1.2));
    expect(others).toEqual([]);
    expect(planks?.pieces?.map(({ length, count }) => [length, count])).toEqual([[expect.closeTo(2.4, 9), 2]]);
    expect(lines(undefined).map((l) => l.id)).toEqual(['access/ramp']);
  });

  it('an anchor whose rope is pulled aside holds the sum of both as vectors', () => {
    expect(anchorPull(600, 200, 0)).toEqual({ force: 800, aside: 0 });
    const square = anchorPull(400, 300, 90);
    expect(square.force).toBeCloseTo(500, 9);
    expect(square.aside).toBeCloseTo((Math.atan2(3, 4) * 180) / Math.PI, 9);
  });
});

describe('what lies under the unit', () => {
  const platform = 'routes.access.platform';
  it('panels and timbers add their weight to the joists; on edge they are stronger than flat', () => {
    const used = (changes: Readonly<Record<string, unknown>>, id = 'joists') =>
      (found(changes, id).value as { likely: number }).likely;
    expect(used({ [`${platform}.sheet`]: n(0.018) })).toBeGreaterThan(used({}));
    expect(used({ [`${platform}.cross`]: 'flat-2x4' })).toBeGreaterThan(used({}));
    const across = (cross: string) => used({ [`${platform}.cross`]: cross }, 'across');
    // Same section turned: moduli are as depth to width.
    expect(across('flat-2x4') / across('edge-2x4')).toBeGreaterThan(2);
  });

  it('an unknown timber makes a range, from the weakest grade to the best', () => {
    const { low, likely, high } = found({}, 'joists').value as { low: number; likely: number; high: number };
    expect(low).toBeLessThan(likely);
    expect(high).toBeGreaterThan(likely);
    expect(high / likely).toBeCloseTo(875 / 675, 9);
  });

  it('soft mounts hold the shaking off, stiff ones that swing with the blower are said to be none', () => {
    const mounts = (gives: number) =>
      found({ [`${platform}.isolation`]: 'springs', [`${platform}.gives`]: n(gives) }, 'mounts');
    expect(mounts(0.02).status).toBe('ok');
    expect(mounts(0.0012).because).toBe('out-of-range');
    // An inch of sag swings at 3.13 Hz.
    expect(ownFrequency(0.0254)).toBeCloseTo(3.127, 3);
    expect(shakenThrough(0.0254, 2 * ownFrequency(0.0254))).toBeCloseTo(1 / 3, 12);
    expect(shakenThrough(0, 20)).toBe(1);
  });
});
