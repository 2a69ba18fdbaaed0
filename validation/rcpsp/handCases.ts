import { chanceBy, chancesOf, checkPlan, meanOf, planWork, varianceOf, type WorkSpec } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row } from '../src/row.ts';

const check = checker('rcpsp');

/** Hours, people, after, float: the invented crew of three. */
const crew = {
  A: [3, 2, [], 1],
  B: [2, 1, [], 0],
  C: [4, 2, [], 2],
  D: [2, 2, ['A'], 1],
  E: [3, 1, ['B'], 0],
  F: [1, 3, ['C', 'D'], 1],
  G: [2, 1, ['E'], 0],
} as const;
const startsFree = { A: 0, B: 0, C: 0, D: 3, E: 2, F: 5, G: 5 } as const;

const spec = (people: number, hot: readonly string[] = []): WorkSpec => ({
  horizon: 2400,
  step: 60,
  resources: [{ id: 'people', units: people }],
  calendars: [{ id: 'heat', shut: [{ from: 180, to: 360 }] }],
  tasks: Object.entries(crew).map(([id, [hours, units, after]]) => ({
    id,
    pieces: [{ id: 'all', minutes: 60 * hours }],
    needs: [{ resource: 'people', units }],
    after: after.map((task) => ({ task })),
    calendars: hot.includes(id) ? ['heat'] : [],
  })),
});

/** Ends of the crew's plan in hours, each a plan that the checker finds nothing wrong with, and proved. */
function ends(): Row[] {
  const cases = [
    ['people enough', spec(99), 7],
    ['three people', spec(3), 10],
    ['three people, C not in the hot hours', spec(3, ['C']), 11],
    ['three people, A and D not in the hot hours', spec(3, ['A', 'D']), 10],
  ] as const;
  return cases.flatMap(([name, x, expected]) => {
    const { plan } = planWork(x);
    const fine = plan && checkPlan(x, plan.pieces).length === 0;
    return [
      check(name, 'makespan', 'h', expected, 0, fine ? plan.end / 60 : undefined),
      check(name, 'lower bound', 'h', expected, 0, plan ? plan.bound / 60 : undefined),
    ];
  });
}

function floats(): Row[] {
  const { plan } = planWork(spec(99));
  return Object.entries(crew).flatMap(([id, [, , , float]]) => {
    const piece = plan?.pieces.find((p) => p.task === id);
    const start = startsFree[id as keyof typeof startsFree];
    return [
      check(`people enough, ${id}`, 'start', 'h', start, 0, piece && piece.from / 60),
      check(`people enough, ${id}`, 'slack', 'h', float, 0, piece && piece.slack / 60),
    ];
  });
}

function lengths(): Row[] {
  const cases = [
    [{ low: 2, likely: 3, high: 7 }, 3.5, 0.694444],
    [{ low: 1, likely: 2, high: 3 }, 2, 0.111111],
  ] as const;
  return cases.flatMap(([x, mean, variance]) => {
    const name = `${x.low}, ${x.likely}, ${x.high}`;
    return [
      check(name, 'mean', 'min', mean, 1e-9, meanOf(x), 'from memory'),
      check(name, 'variance', 'min2', variance, 1e-6, varianceOf(x), 'from memory'),
    ];
  });
}

/** Twelve like pieces in a chain: the sum is near a normal distribution with the means and variances summed. */
function chances(): Row[] {
  const points = { low: 60, likely: 120, high: 300 };
  const chain: WorkSpec = {
    horizon: 6000,
    step: 1,
    resources: [],
    calendars: [],
    tasks: Array.from({ length: 12 }, (_, i) => ({
      id: `t${i}`,
      pieces: [{ id: 'all', minutes: points }],
      needs: [],
      after: i > 0 ? [{ task: `t${i - 1}` }] : [],
    })),
  };
  const found = chancesOf(chain, planWork(chain).plan?.pieces ?? [], { lives: 4000 });
  const mean = 12 * meanOf(points);
  const deviation = Math.sqrt((12 * (meanOf(points) - 60) * (300 - meanOf(points))) / 7);
  const cases = [
    [-1, 0.158655],
    [0, 0.5],
    [1, 0.841345],
    [2, 0.97725],
  ] as const;
  return cases.map(([z, share]) =>
    check(
      `chain of twelve, ${z} deviations`,
      'chance',
      '1',
      share,
      0.025,
      found && chanceBy(found, mean + z * deviation),
    ),
  );
}

export const handRows = (): Row[] => [...ends(), ...floats(), ...lengths(), ...chances()];
