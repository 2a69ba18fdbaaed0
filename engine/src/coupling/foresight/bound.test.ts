import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Policy, replay } from '../../../test/foresight/replay.ts';
import { evaluate } from '../../index.ts';
import { highsSolver } from '../../physics/dispatch/highsSolver.ts';
import { type Certificate, certify, type Dispatch, dispatchProgramme } from '../../physics/dispatch/index.ts';
import { weatherOfYear } from '../houseYear/table.ts';
import { powerRuns } from '../power/powerRun.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';
import { controlRuns } from './controlRuns.ts';
import { dispatchOf } from './dispatchOf.ts';

const days = 40;
let spell: Dispatch;
let least: Certificate;

/** The first days of the year; the battery's floor at its lowest, so that no policy can be below it. */
function spellOf(d: Dispatch, steps: number): Dispatch {
  const cut = (x: Float64Array): Float64Array => x.slice(0, steps);
  const { battery: b, house } = d;
  const floor = cut(b.floor).fill(Math.min(...cut(b.floor)));
  const battery = { ...b, floor, charge: cut(b.charge), discharge: cut(b.discharge), end: 0 };
  return {
    ...d,
    steps,
    sun: cut(d.sun),
    direct: cut(d.direct),
    load: cut(d.load),
    battery,
    generator: { ...d.generator, cost: cut(d.generator.cost) },
    ...(house ? { house: { ...house, heat: cut(house.heat), low: cut(house.low), high: cut(house.high) } } : {}),
  };
}

beforeAll(async () => {
  const project = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  const given = evaluate(project, {}).wanted.find((j) => j.kind === 'coupling/power-year')?.inputs as PowerYearInputs;
  const inputs = { ...given, step: 3600 };
  const ready = powerRuns(
    inputs,
    weatherOfYear(inputs.weather, () => {
      throw new Error('the demo brings no file');
    }),
  );
  const runs = controlRuns(ready, () => {});
  // The fit follows the house to a sixth of what it strays.
  expect(runs.house.missed).toBeLessThan(runs.house.stray / 6);
  spell = spellOf(dispatchOf(inputs, runs, ready), days * 24);
  const { programme } = dispatchProgramme(spell);
  const solved = highsSolver(await loadHighs())(programme);
  if (solved.status !== 'optimal') throw new Error('the spell has an optimum');
  least = certify(programme, solved.values, solved.prices);
});

/** The generator by the battery's charge, as it is set up; the room as a rule says. */
const byCharge =
  (start: number, stop: number, aim: (step: number) => number): Policy =>
  (step, share, running) => ({ aim: aim(step), run: share < start || (running && share < stop) });

describe('the least that any control could burn', () => {
  it('is proved by its own certificate', () => {
    expect(least.holds).toBe(true);
    expect(least.bound).toBeGreaterThan(10);
  });

  it('is never beaten by the built-in rules on the same model, nor by what they could be set to', () => {
    const asSet = replay(
      spell,
      byCharge(0.25, 0.8, () => 0),
    );
    expect(asSet).toBeGreaterThan(least.bound);
    // It is a bound that says something, too: well over half of what the rules burn.
    expect(least.bound).toBeGreaterThan(0.5 * asSet);
    const night = (step: number): number => (step % 24 < 6 ? -1 : 1);
    for (const start of [0.15, 0.4])
      for (const stop of [0.45, 0.95])
        for (const aim of [() => -1, () => 2, night])
          expect(replay(spell, byCharge(start, stop, aim))).toBeGreaterThan(least.bound);
  });

  it('is not beaten by chance either', () => {
    const step = fc.record({ aim: fc.double({ min: -1, max: 2, noNaN: true }), run: fc.boolean() });
    fc.assert(
      fc.property(fc.array(step, { minLength: 24, maxLength: 24 }), (hours) => {
        const policy: Policy = (t) => hours[t % 24] ?? { aim: 0, run: false };
        return replay(spell, policy) >= least.bound;
      }),
      { numRuns: 40, seed: 7 },
    );
  });
});
