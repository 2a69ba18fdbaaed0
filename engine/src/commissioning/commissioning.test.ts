import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { coldMemo, evaluate, runJob } from '../index.ts';
import type { Plan } from '../plan/plan.ts';

const is = (value: number) => ({ value, known: 'measured' as const });
const host = { blob: () => undefined, tell: () => undefined };
const known: Record<string, unknown> = {};
/** One house, many readings: only what hangs on them is done again. */
const [whole, memo] = [demo('juniper-flat'), coldMemo()];

type Visits = NonNullable<Project['visits']>;
type Readings = NonNullable<Project['readings']>;

/** The plan of Juniper Flat with these visits and readings, its commissioning jobs done. */
function planOf(visits: Visits, readings: Readings, power?: Project['power']): Plan {
  const project: Project = { ...whole, visits, readings, ...(power ? { power } : {}) };
  for (const job of evaluate(project, known, { memo }).wanted)
    if (job.kind === 'commissioning/responses') known[job.key] ??= runJob(job, host);
  return evaluate(project, known, { memo }).plan;
}

const finding = (plan: Plan, id: string) => {
  const found = plan.findings.find((f) => f.id === `commissioning/${id}`);
  if (!found) throw new Error(`no finding ${id}`);
  return found;
};

const heating: Visits = { first: { mode: 'heating', outdoor: is(0), returnAir: is(20), minutes: is(1800) } };
const idle: Visits[string] = {
  name: 'Idling',
  mode: 'cooling',
  speed: 'low',
  minutes: is(3600),
  outdoor: is(30),
  returnAir: is(24),
  returnHumidity: is(0.5),
};

describe('a reading of about 2,000 W from a unit that idles along at low speed', () => {
  const read = (over: Readings[string], visit: Visits[string] = idle, power?: Project['power']) =>
    planOf(
      { idle: visit },
      { watts: { visit: 'idle', expected: 'commissioning/power', value: is(2000), ...over } },
      power,
    );
  const verdict = (plan: Plan) => plan.trades.commissioning?.visits.idle?.found;
  const power = (plan: Plan) => {
    const found = verdict(plan);
    return found?.ok ? found.value.power : undefined;
  };

  it('cannot be told from the house’s meter while the house’s own draw is in it', () => {
    const plan = read({ means: 'house' });
    expect(power(plan)?.verdict).toBe('cannot tell');
    expect(power(plan)?.reasons).toContain('base-large');
    expect(finding(plan, 'power:idle')).toMatchObject({ status: 'unknown', because: 'missing' });
    expect(finding(plan, 'power:idle').mend).toMatch(/breaker/);
  });

  it('is explained once the house is seen to draw the rest', () => {
    const plan = read({ means: 'house', baseTaken: 'no' }, { ...idle, strips: 'off', houseBase: is(1580) });
    expect(power(plan)).toMatchObject({ verdict: 'explained', reasons: ['fits', 'base'] });
    expect(finding(plan, 'power:idle').status).toBe('ok');
  });

  it('is suspicious on the unit’s own circuit, strips proved off, and fits another speed', () => {
    const plan = read({ means: 'meter' }, { ...idle, strips: 'off' });
    expect(power(plan)?.verdict).toBe('suspicious');
    expect(power(plan)?.reasons).toEqual(['speed']);
    expect(finding(plan, 'power:idle').status).toBe('fails');
    const found = verdict(plan);
    expect(found?.ok && found.value.suspects[0]?.causes).toContain('other-speed');
  });

  it('says what a night of it does to a battery of one’s own', () => {
    const own = { ...demo('tern-ledge').power, battery: { energy: is(28), usable: is(0.9) } };
    // 28 kWh, nine tenths of it, over 2 kW.
    expect(finding(read({ means: 'meter' }, idle, own), 'power:idle').why).toMatch(/20 kWh.*carries 12\.6 h/);
  });
});

describe('readings that should not be believed', () => {
  it('a value in another unit is asked about and counts for nothing', () => {
    const plan = planOf(heating, { a: { visit: 'first', expected: 'air/static', value: is(0.37), means: 'gauge' } });
    const asked = finding(plan, 'reading:first:a');
    expect(asked).toMatchObject({ status: 'unknown', needs: ['readings.a.value'] });
    expect(asked.what).toMatch(/would fit in inH2O/);
    expect(finding(plan, 'causes:first').status).toBe('unknown');
  });

  it('a Fahrenheit figure among Celsius is asked about', () => {
    const hot = { ...heating.first, supplyAir: is(104) };
    expect(finding(planOf({ first: hot }, {}), 'reading:first:first-supply').what).toMatch(/would fit in °F/);
  });

  it('of two that cannot both be true neither counts', () => {
    const twice = (value: number) => ({
      visit: 'first',
      expected: 'air/static',
      value: is(value),
      means: 'gauge' as const,
    });
    const plan = planOf(heating, { a: twice(93), b: twice(150) });
    for (const id of ['a', 'b']) expect(finding(plan, `reading:first:${id}`).what).toMatch(/cannot be true beside/);
    expect(finding(plan, 'causes:first').status).toBe('unknown');
  });

  it('without its state, or too early, it is set aside', () => {
    const static93 = { a: { visit: 'first', expected: 'air/static', value: is(93) } };
    const bare = planOf({ first: { mode: 'heating', returnAir: is(20) } }, static93);
    expect(finding(bare, 'conditions:first')).toMatchObject({ status: 'unknown', needs: ['visits.first.outdoor'] });
    const young = planOf({ first: { ...heating.first, minutes: is(300) } }, static93);
    expect(finding(young, 'conditions:first').status).toBe('fails');
    expect(finding(young, 'causes:first').status).toBe('unknown');
  });

  it('one that names no visit is asked about', () => {
    const plan = planOf(heating, { a: { expected: 'air/static', value: is(93) } });
    expect(finding(plan, 'loose')).toMatchObject({ status: 'unknown', needs: ['readings.a.visit'] });
  });
});

describe('what readings of a visit mean', () => {
  const gauge = (expected: string, value: number) => ({
    visit: 'first',
    expected,
    value: is(value),
    means: 'gauge' as const,
    repeats: is(3),
  });

  it('sound ones are good, and hardly anything is suspected', () => {
    const plan = planOf(
      { first: { ...heating.first, filter: 'clean', supplyAir: is(39.5) } },
      { a: gauge('air/static', 93), b: gauge('commissioning/filter-drop', 34) },
    );
    expect(finding(plan, 'reading:first:a').status).toBe('ok');
    const found = plan.trades.commissioning?.visits.first?.found;
    expect(found?.ok && found.value.suspects[0]?.id).toBe('none');
  });

  it('one kind of reading alone makes nothing likelier than four fifths', () => {
    const plan = planOf(heating, {
      a: gauge('air/static', 150),
      b: gauge('commissioning/filter-drop', 115),
      c: gauge('commissioning/return-static', 133),
    });
    const found = plan.trades.commissioning?.visits.first?.found;
    if (!found?.ok) throw new Error('not found');
    expect(found.value.kinds).toBe(1);
    expect(found.value.suspects[0]?.causes).toContain('dirty-filter');
    expect(Math.max(...found.value.suspects.map((s) => s.chance))).toBeLessThanOrEqual(0.8 + 1e-12);
    const all = found.value.suspects.reduce((sum, s) => sum + s.chance, 0) + found.value.rest;
    expect(all).toBeCloseTo(1, 9);
  });

  it('a look that was answered counts like a number', () => {
    const high = { a: gauge('air/static', 135) };
    const seen = { ...high, b: { visit: 'first', expected: 'look/filter', value: is(1), means: 'watch' as const } };
    const chance = (readings: Readings) => {
      const found = planOf(heating, readings).trades.commissioning?.visits.first?.found;
      return found?.ok ? (found.value.involved['dirty-filter'] ?? 0) : 0;
    };
    expect(chance(seen)).toBeGreaterThan(chance(high) + 0.2);
  });
});
