import { type Project, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { alderHall } from '../../../../demos/src/alderHall.ts';
import { demo, numbersIn } from '../../../test/demos.ts';
import { evaluate, printerFor } from '../../index.ts';
import { airDensity, airViscosity } from '../../physics/air/index.ts';
import { attempt } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { boughtSections } from '../bought.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import { fittingsOf } from './fittingsOf.ts';
import { changeWords, nextSizeWords, relaxationWords, runnerUpWords, sizingSentence } from './messages.ts';
import { reshaped, sectionLoss, shapeOf } from './reshape.ts';
import type { DuctSizingInput } from './setUp.ts';
import { sizeDucts } from './sizeDucts.ts';
import type { Relaxation } from './spec.ts';
import { quietVelocities } from './velocity.ts';
import { wantedFlows } from './wantedFlows.ts';

function inputFor(project: Project): DuctSizingInput {
  const { air, equipment } = evaluate(project, {}).plan.trades;
  if (!air?.model.ok || !equipment?.chosen.ok) throw new Error('the demo has ducts and a unit');
  const unit = equipment.candidates[equipment.chosen.value];
  if (!unit) throw new Error('the demo has a unit');
  const resolved = resolveProject(project);
  const rooms = Object.values(air.rooms).flatMap((r) => (r.wanted.ok ? [[r.room, r.wanted.value] as const] : []));
  return {
    model: air.model.value,
    fittings: fittingsOf(resolved.routes.ducts, scenario()),
    rooms: Object.fromEntries(rooms),
    flow: Math.max(...unit.unit.rows.flatMap((r) => r.airflow ?? [])),
    ...(unit.blower.staticMost === undefined ? {} : { staticMost: unit.blower.staticMost }),
    bought: boughtSections(resolved),
  };
}

const tern = inputFor(demo('tern-ledge'));
const juniper = inputFor(demo('juniper-flat'));
const hall = inputFor(alderHall());
const free = (input: DuctSizingInput): DuctSizingInput => ({ ...input, bought: {} });
const inputs = [
  ['Tern Ledge', tern],
  ['Juniper Flat, nothing bought', free(juniper)],
  ['Alder Hall', hall],
] as const;

describe('what a section loses', () => {
  it('is what the network solver finds at its own flows, to 1e-9', () => {
    const flows = solveFlows(tern.model, nominalAir);
    const air = { density: airDensity(20, tern.model.pressure), viscosity: airViscosity(20) };
    for (const x of tern.model.sections) {
      const loss = sectionLoss(x, flows.sections[x.id] ?? 0, air);
      expect(loss / (flows.drops[x.id] ?? 0)).toBeCloseTo(1, 9);
    }
  });

  it('does not change when a section is made anew in the size and kind it has', () => {
    for (const x of [...tern.model.sections, ...juniper.model.sections]) {
      const again = reshaped(x, shapeOf(x), undefined);
      for (const key of ['diameter', 'area', 'surface', 'roughness', 'frictionFactor', 'lossCoefficient'] as const)
        expect(again[key]).toBeCloseTo(x[key], 9);
    }
  });
});

describe('wanted flows', () => {
  it('add up to what the unit moves, leaks counted, on both sides', () => {
    const { sections, terminals } = wantedFlows(tern.model, tern.rooms, 0.33);
    expect(sections['supply-plenum']).toBeCloseTo(0.33, 12);
    expect(sections['return-box']).toBeCloseTo(0.33, 12);
    const leaked = tern.model.sections.reduce(
      (a, x) => a + (x.side === 'supply' ? (sections[x.id] ?? 0) * x.leakage : 0),
      0,
    );
    const registers = Object.entries(terminals).reduce((a, [id, q]) => a + (id.startsWith('reg') ? q : 0), 0);
    expect(registers + leaked).toBeCloseTo(0.33, 12);
    expect((terminals['reg-bath'] ?? 0) / (terminals['reg-work'] ?? 1)).toBeCloseTo(
      (tern.rooms.bath ?? 0) / (tern.rooms.work ?? 1),
      12,
    );
  });
});

describe.each(inputs)('the ducts of %s', (_name, input) => {
  const sized = sizeDucts(input);
  const print = printerFor('us');

  it('fit, proved, within pressure and speed, and the blower then moves no less than wanted', () => {
    if (sized.sizing.status !== 'fits') throw new Error('it fits');
    expect(sized.sizing.proof).toEqual({ kind: 'proved' });
    expect(sized.sizing.best.totals.pressure).toBeLessThanOrEqual(sized.pressure.left + 1e-6);
    const real = solveFlows(sized.sized, nominalAir);
    expect(real.converged).toBe(true);
    expect(real.flow).toBeGreaterThanOrEqual(input.flow);
    if (input.staticMost !== undefined) expect(real.staticPressure).toBeLessThanOrEqual(input.staticMost);
  });

  it('come out the same again, every number finite', () => {
    expect(sizeDucts(input)).toEqual(sized);
    for (const [path, x] of numbersIn(sized)) expect(Number.isFinite(x), path).toBe(true);
  });

  it('cost no more than any other goal’s choice, and no choice takes less pressure than the least static', () => {
    const by = (goal: 'labour' | 'static') => sizeDucts({ ...input, goal }).sizing;
    const [work, least] = [by('labour'), by('static')];
    if (sized.sizing.status !== 'fits' || work.status !== 'fits' || least.status !== 'fits') throw new Error('it fits');
    expect(sized.sizing.best.totals.money).toBeLessThanOrEqual(work.best.totals.money);
    expect(work.best.totals.labour).toBeLessThanOrEqual(sized.sizing.best.totals.labour);
    expect(least.best.totals.pressure).toBe(sized.sizing.leastPressure);
    expect(least.best.totals.pressure).toBeLessThanOrEqual(work.best.totals.pressure);
  });

  it('are told in plain words', () => {
    if (sized.sizing.status !== 'fits') throw new Error('it fits');
    const said = [
      sizingSentence(sized, print),
      runnerUpWords(sized, print),
      ...sized.changed.map((id) => changeWords(sized, id, print)),
      ...sized.sizing.next.map((n) => nextSizeWords(sized, n, print)),
    ].join(' ');
    expect(said).toContain('Proved: no other choice is better.');
    expect(said).not.toMatch(/NaN|undefined|null/);
  });
});

describe('what is bought', () => {
  it.each(['ordered', 'arrived', 'fitted'] as const)(
    'stays as it is once %s, even where it breaks a limit',
    (state) => {
      const project = structuredClone(demo('tern-ledge')) as Project & { items: Record<string, unknown> };
      project.items.duct = { order: 'b00', name: 'Return', state, of: 'routes.ducts.sections.return-hall' };
      const bought = boughtSections(resolveProject(project));
      expect(Object.keys(bought)).toContain('return-hall');
      const sized = sizeDucts({ ...tern, bought, flow: 0.26 });
      if (sized.sizing.status !== 'fits') throw new Error('at this flow it fits');
      expect(sized.sizing.best.choice['return-hall']).toBe('flexible 229');
      expect(sized.changed).not.toContain('return-hall');
      expect(changeWords(sizeDucts(tern), 'return-hall', printerFor('us'))).toBe(
        '“Return from the hall”: 14" flexible instead of 9" flexible.',
      );
      expect(sized.drawn.breaks).toContain('return-hall');
      expect(sized.sections['return-hall']?.kept).toBe('bought');
      const free = sizeDucts({ ...tern, flow: 0.26 }).sizing;
      expect(free.status === 'fits' ? free.best.choice['return-hall'] : '').not.toBe('flexible 229');
    },
  );

  it('and too small for any choice of the rest: less flow, more pressure or an exchange, each enough when tried', () => {
    const { sizing } = sizeDucts(juniper);
    if (sizing.status !== 'nothing-fits') throw new Error('the old ducts are too small');
    expect(sizing.relaxations.map((r) => r.limit)).toEqual(['flow', 'budget', 'bought']);
    const [less, , exchange] = sizing.relaxations;
    expect(sizeDucts({ ...juniper, flow: less?.to ?? 0 }).sizing.status).toBe('fits');
    expect(sizeDucts({ ...juniper, flow: (less?.to ?? 0) + juniper.flow / 100 }).sizing.status).toBe('nothing-fits');
    const { [exchange?.section ?? '']: _one, ...others } = juniper.bought;
    expect(Object.keys(others).length).toBe(Object.keys(juniper.bought).length - 1);
    expect(sizeDucts({ ...juniper, bought: others }).sizing.status).toBe('fits');
  });
});

describe('425 L/s through a 300 mm joist bay', () => {
  // A trunk of rectangular metal that has to lie in one bay between joists: 300 mm high, 370 mm wide, over its wrap.
  const trunk = {
    ...juniper,
    bought: {},
    flow: 0.425,
    staticMost: 400,
    kinds: { trunk: ['rectangular', 'round', 'flexible'] as const },
  };
  const strong = {
    ...trunk,
    model: {
      ...trunk.model,
      blower: {
        setting: 'strong',
        points: [
          { flow: 0.1, pressure: 500 },
          { flow: 0.6, pressure: 300 },
        ],
      },
    },
  };
  const bay = { trunk: { depth: 0.3, width: 0.37 } };
  const sized = sizeDucts({ ...strong, spaces: bay });

  it('has no stocked size, and three ways out', () => {
    if (sized.sizing.status !== 'nothing-fits') throw new Error('nothing fits');
    expect(sized.sizing.closed).toEqual(['trunk']);
    expect(sized.sizing.relaxations.length).toBe(3);
    const print = printerFor('si');
    expect(sizingSentence(sized, print)).toMatch(
      /^No choice of stocked sizes takes 425 L\/s through “Old supply trunk”, .* Take one of these three:$/,
    );
    for (const r of sized.sizing.relaxations)
      expect(relaxationWords(sized, r, print)).not.toMatch(/NaN|undefined|null/);
  });

  it('each way out lets everything fit when it is taken, and no less of it does', () => {
    if (sized.sizing.status !== 'nothing-fits') throw new Error('nothing fits');
    const space = (side: 'depth' | 'width') => (to: number) => ({ spaces: { trunk: { ...bay.trunk, [side]: to } } });
    const tries: Partial<Record<Relaxation['limit'], (to: number, from: number) => Partial<DuctSizingInput>>> = {
      depth: space('depth'),
      width: space('width'),
      velocity: (to) => ({ limits: { ...quietVelocities, 'supply trunk': { rigid: to, flexible: 3.556 } } }),
      flow: (to, from) => ({ flow: (strong.flow * to) / from }),
    };
    for (const r of sized.sizing.relaxations) {
      expect(r.enough).toBe(true);
      const statusWith = (to: number) =>
        sizeDucts({ ...strong, spaces: bay, ...tries[r.limit]?.(to, r.from) }).sizing.status;
      const less = r.limit === 'flow' ? 1.001 : 0.999;
      expect(statusWith(r.to)).toBe('fits');
      expect(statusWith(r.to * less)).toBe('nothing-fits');
    }
  });

  it('in 200 mm of height only more height helps: nothing absurd is offered', () => {
    const { sizing } = sizeDucts({ ...strong, spaces: { trunk: { depth: 0.2 } } });
    expect(sizing.status === 'fits' ? [] : sizing.relaxations.map((r) => r.limit)).toEqual(['depth']);
  });
});

describe('a filter that takes all the blower gives', () => {
  it('is said, as what has to give', () => {
    const clogged = { ...tern, model: { ...tern.model, filter: { ...tern.model.filter, area: 0.05 } } };
    const sized = sizeDucts(clogged);
    expect(sized.pressure.left).toBeLessThan(0);
    expect(sizingSentence(sized, printerFor('us'))).toMatch(
      /^The filter and what is added take all that the blower gives/,
    );
  });
});

describe('bad input', () => {
  it.each<[string, Partial<DuctSizingInput>, string]>([
    ['a room without a wanted flow', { rooms: {} }, 'house.rooms.sitting'],
    ['a flow beyond the blower’s table', { flow: 2 }, 'candidates.*.blower.speeds'],
  ])('%s is named by its place', (_name, change, path) => {
    const out = attempt(() => sizeDucts({ ...tern, ...change }));
    expect(out.ok ? [] : out.paths).toEqual([path]);
  });
});
