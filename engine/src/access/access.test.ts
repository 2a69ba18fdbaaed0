import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding, runJob } from '../index.ts';
import { faceSpare, neverThrough, widthForTurned } from './kernels/index.ts';

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
