import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { coldestAt } from './coldest.ts';
import { slopeLeast } from './kernels/slope.ts';
import { trapUnderSuction } from './kernels/trap.ts';
import { pipeFittings } from './pipeFittings.ts';

const n = (value: number) => ({ value, known: 'measured' });

/** Tern Ledge with entries of its drain changed; undefined takes one out. */
function changed(changes: Readonly<Record<string, unknown>>): Project {
  const project = structuredClone(demo('tern-ledge')) as unknown as { routes: { drain: Record<string, unknown> } };
  for (const [key, value] of Object.entries(changes)) {
    if (value === undefined) delete project.routes.drain[key];
    else project.routes.drain[key] = value;
  }
  return project as unknown as Project;
}
const found = (project: Project, id: string): Finding => {
  const finding = evaluate(project, {}).plan.findings.find((f) => f.id === `condensate/${id}`);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};
const has = (project: Project, id: string): boolean =>
  evaluate(project, {}).plan.findings.some((f) => f.id === `condensate/${id}`);

describe('what a drain is judged by', () => {
  it('the trap is as deep as the suction that the ducts really make, and risers give it its room', () => {
    const low = found(changed({ below: n(0.09) }), 'trap-room');
    expect(low.status).toBe('fails');
    const plan = evaluate(changed({ below: n(0.09) }), {}).plan;
    const { condensate, air } = plan.trades;
    if (!condensate?.pressure.ok || !condensate.trap.ok || !air?.ladder.ok || !air.flows.ok) throw new Error('known');
    const returns = air.ladder.value.filter((r) => r.side === 'return').reduce((sum, r) => sum + r.drop, 0);
    // Return, twice the clean filter, and 125 Pa of a wet coil at the most.
    const suction = returns + 2 * air.flows.value.filterPressure + 125;
    expect(condensate.pressure.value.high).toBeCloseTo(suction, 9);
    expect(condensate.trap.value).toEqual(trapUnderSuction(suction));
    expect(found(changed({ below: n((low.limit?.min ?? 0) + 0.001) }), 'trap-room').status).toBe('ok');
  });

  it('a smaller return, a deeper trap', () => {
    const narrow = structuredClone(demo('tern-ledge')) as unknown as {
      routes: { ducts: { sections: Record<string, { side?: string; diameter?: unknown }> } };
    };
    for (const section of Object.values(narrow.routes.ducts.sections))
      if (section.side === 'return') section.diameter = n(0.2);
    const room = (project: Project) => found(project, 'trap-room').limit?.min ?? 0;
    expect(room(narrow as unknown as Project)).toBeGreaterThan(room(demo('tern-ledge')));
  });

  it('a blower before the coil needs a seal for its pressure instead', () => {
    const pushes = evaluate(changed({ blower: 'before' }), {}).plan.trades.condensate;
    expect(pushes?.pulls).toBe(false);
    expect(pushes?.trap.ok && pushes.trap.value.drop).toBeCloseTo(0.0127, 12);
  });

  it('the least fall is an eighth of an inch in a foot of its own way', () => {
    expect(found(changed({ run: n(9.6), fall: n(0.1) }), 'fall').status).toBe('ok');
    expect(found(changed({ run: n(9.6), fall: n(9.6 * slopeLeast - 0.001) }), 'fall').status).toBe('fails');
  });

  it.each([
    ['vent', 'before', 'fails'],
    ['vent', 'none', 'fails'],
    ['second', 'none', 'fails'],
    ['second', 'switch', 'ok'],
    ['ends', 'waste', 'fails'],
    ['ends', 'gap', 'ok'],
    ['vent', undefined, 'unknown'],
    ['ends', undefined, 'unknown'],
  ] as const)('%s: %s %s', (field, answer, status) => {
    expect(found(changed({ [field]: answer }), field).status).toBe(status);
  });

  it('a drain into a waste pipe carries its caution', () => {
    expect(found(changed({ ends: 'waste' }), 'ends').caution).toMatch(/gas/);
  });

  it('a pan has to be deep and larger than the unit in it', () => {
    const pan = (length: number, depth: number) =>
      changed({ second: 'pan', pan: { length: n(length), width: n(1), depth: n(depth) } });
    expect(found(pan(2, 0.04), 'pan-larger').status).toBe('ok');
    expect(found(pan(1, 0.04), 'pan-larger').status).toBe('fails');
    expect(found(pan(2, 0.03), 'pan-depth').status).toBe('fails');
    expect(has(changed({ second: 'switch' }), 'pan-depth')).toBe(false);
  });

  it('standing water freezes in a cold attic, not in a heated room, and not where somebody empties it', () => {
    expect(found(changed({ place: 'attic' }), 'freezes').status).toBe('fails');
    expect(found(changed({ place: 'inside' }), 'freezes').status).toBe('ok');
    expect(has(changed({ heated: 'yes' }), 'freezes')).toBe(false);
  });

  it('is not called safe where only the likely night stays above freezing', () => {
    const night = (low: number, likely: number, high: number): Project => {
      const project = structuredClone(changed({ place: 'outdoors' })) as unknown as { site: Record<string, unknown> };
      project.site.coldNight = { value: { low, likely, high }, known: 'estimated' };
      return project as unknown as Project;
    };
    expect(found(night(1, 3, 5), 'freezes').status).toBe('ok');
    const { condensate } = evaluate(night(-3, 1, 3), {}).plan.trades;
    const doubtful = found(night(-3, 1, 3), 'freezes');
    expect(doubtful).toMatchObject({ status: 'tight', value: { low: -3, likely: 1, high: 3 } });
    expect(doubtful.what).toMatch(/In the colder of these standing water/);
    // A bare full pipe, 20.9 and 26.9 mm, film 8 W/(m²K), 5 °C: R = 1/(8 pi 0.0269); R C ln(8/3), R rho A L / 3, by hand.
    expect(condensate?.frost.ok && condensate.frost.value.cold).toBeCloseTo(2083.4, 0);
    expect(condensate?.frost.ok && condensate.frost.value.solid).toBeCloseTo(56_496, -1);
  });

  it('below the floor it may be as much colder than its year as the night outdoors may be', () => {
    const upstream = (low: number) => ({
      climate: { night: { ok: true, value: { outdoor: { low, likely: low + 2, high: low + 4 } } } },
      loads: { year: { ok: true, value: { frosts: { below: { lowest: 0.8 }, outdoor: { lowest: -17 } } } } },
    });
    const at = (low: number) => coldestAt('below', upstream(low) as unknown as Parameters<typeof coldestAt>[1]);
    expect(at(-19).low).toBeCloseTo(-1.2, 12);
    expect(at(-16)).toEqual({ low: 0.8, likely: 0.8, high: 0.8 });
  });

  it('lengths of nothing make nothing infinite', () => {
    const plan = evaluate(changed({ run: n(0), fall: n(0), size: n(0.001), below: n(0) }), {}).plan;
    expect(JSON.stringify(plan.findings.filter((f) => f.trade === 'condensate'))).not.toMatch(/null|NaN|Infinity/);
  });
});

describe('its way, its second line, its risers', () => {
  const stretch = (place: string, run: number, fall: number) => ({ place, run: n(run), fall: n(fall) });

  it('a level stretch fails though the whole falls enough, and stretches sum to the whole', () => {
    const project = changed({ stretches: { a: stretch('attic', 3, 0.2), b: stretch('outdoors', 3, 0.01) } });
    expect(found(project, 'fall').value).toBeCloseTo(0.21, 12);
    expect(found(project, 'fall').limit?.min).toBeCloseTo(6 / 96, 12);
    expect(found(project, 'fall-of:a').status).toBe('ok');
    expect(found(project, 'fall-of:b').status).toBe('fails');
  });

  it('water stands, and so freezes, in the trap and where the drain does not fall; not in a pipe that falls empty', () => {
    const outside = (fall: number) =>
      changed({ place: 'inside', stretches: { a: stretch('inside', 3, 0.2), b: stretch('outdoors', 3, fall) } });
    expect(found(outside(0.05), 'freezes').status).toBe('ok');
    expect(found(outside(0.01), 'freezes').status).toBe('fails');
  });

  it('the second outlet lies above the first, and its line ends on its own where it is seen', () => {
    const second = (above: number, ends: string) =>
      changed({ second: 'overflow', secondLine: { above: n(above), run: n(4), fall: n(0.1), ends } });
    expect(found(second(0.013, 'seen'), 'second-above').status).toBe('ok');
    expect(found(second(0, 'seen'), 'second-above').status).toBe('fails');
    expect(found(second(0.013, 'joined'), 'second-ends').status).toBe('fails');
    expect(found(second(0.013, 'seen'), 'second-fall').limit?.min).toBeCloseTo(4 / 96, 12);
    expect(has(changed({ second: 'switch' }), 'second-ends')).toBe(false);
  });

  it('risers as high as the plan says give the trap its room and the drain its fall, to the last millimetre', () => {
    const at = (risers: number) => {
      const more = risers - 0.05;
      return changed({
        second: 'pan',
        risers: n(risers),
        below: n(0.08 + more),
        fall: n(0.03 + more),
        pan: { length: n(2), width: n(1), depth: n(0.038) },
      });
    };
    const low = found(at(0.05), 'risers');
    expect(low.status).toBe('fails');
    const least = low.limit?.min ?? 0;
    for (const id of ['risers', 'trap-room', 'fall']) expect(found(at(least), id).status).toBe('ok');
    const under = ['trap-room', 'fall'].filter((id) => found(at(least - 0.001), id).status === 'fails');
    expect(under).toHaveLength(1);
  });

  it('a pump lifts by its two ends less its tube, and one that does not stop the unit fails', () => {
    const pump = (lift: number, alarm: string) =>
      changed({
        pump: { used: 'yes', lift: n(lift), tubeRun: n(6), headMost: n(5), flowMost: n(0.06), alarm },
      });
    expect(found(pump(2, 'stops'), 'pump').status).toBe('ok');
    expect(found(pump(5, 'stops'), 'pump').value).toBe(0);
    expect(found(pump(2, 'sounds'), 'pump-fails').status).toBe('fails');
    // Half the height leaves half the flow, less a little for the tube.
    const half = Number(found(pump(2.5, 'stops'), 'pump').value);
    expect(half).toBeLessThan(0.03);
    expect(half).toBeGreaterThan(0.028);
  });

  it('the muggy hour’s water is the coil’s latent heat where air, unit and house agree', () => {
    const { plan } = evaluate(demo('juniper-flat'), {});
    const muggy = plan.findings.find((f) => f.id === 'condensate/muggy-hour');
    const latent = plan.agreement.cooling?.latent ?? 0;
    expect(latent).toBeGreaterThan(0);
    expect(muggy?.value).toBeCloseTo((latent * 3.6) / 2.454e6, 12);
  });
});

describe('foam', () => {
  const foamOf = (changes: Readonly<Record<string, unknown>>) =>
    evaluate(changed(changes), {}).plan.materials.find((l) => l.id === 'condensate/foam');
  const stretches = {
    a: { order: 'a0', name: 'Along', place: 'attic', run: n(3), fall: n(0.1), insulation: n(0.013) },
    b: { order: 'a1', name: 'Down', place: 'inside', run: n(2), fall: n(2) },
  };

  it('goes round the stretches that have some and no others, and round the trap where the drain has', () => {
    expect(foamOf({ stretches })?.amount).toBe(3);
    expect(foamOf({ stretches, insulation: n(0.013) })?.amount).toBe(4);
    expect(foamOf({ stretches, insulation: n(0.013) })?.pieces?.map((p) => p.name)).toEqual([
      'Foam, Along',
      'Foam, trap, vent and clean-outs',
    ]);
    // A drain that is one: all of its 6.4 m and the trap.
    expect(foamOf({ insulation: n(0.013) })?.amount).toBeCloseTo(7.4, 9);
    expect(foamOf({})).toBeUndefined();
  });
});

describe('what joins the pipe', () => {
  it('couplings where lengths end, elbows where a stretch begins or ends', () => {
    const foot = 0.3048;
    // 21 ft of one stretch: 10, 10 and 1. Just 20 ft: one coupling. 12 and 5 ft: one, and three elbows.
    expect(pipeFittings([21 * foot], 1, 10 * foot)).toEqual({ couplings: 2, elbows: 2 });
    expect(pipeFittings([20 * foot], 1, 10 * foot)).toEqual({ couplings: 1, elbows: 2 });
    expect(pipeFittings([12 * foot, 5 * foot], 2, 10 * foot)).toEqual({ couplings: 1, elbows: 3 });
    expect(pipeFittings([0], 0, 10 * foot)).toEqual({ couplings: 0, elbows: 0 });
  });

  it('no blocks beside risers: those lift the unit over the rim of its pan too', () => {
    const lines = evaluate(demo('juniper-flat'), {}).plan.materials.map((l) => l.id);
    expect(lines).toContain('condensate/pan');
    expect(lines).toContain('condensate/risers');
    expect(lines).not.toContain('condensate/blocks');
  });
});
