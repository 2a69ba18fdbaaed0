import { checkProject, type Given, type Project, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate } from '../index.ts';
import { sobolPoints, triangular } from '../physics/sampling/index.ts';
import { required } from '../plan/outcome.ts';
import { rangesRead, type Scenario, scenario, scenarioOf } from '../plan/scenario.ts';
import { balance, sumOf } from './balance.ts';
import { sunOnPlanes } from './sunlight.ts';

const tern = demo('tern-ledge');

/** What is asked first, and nothing else of the project. */
function answersOf(era: string, fuel = {}): Project {
  const { floorArea, storeys, attic, below, draught, flue } = tern.house ?? {};
  const house = { floorArea, storeys, attic, below, draught, flue, era, ...fuel };
  const opened = checkProject({ schema: 1, site: tern.site, house });
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems[0]));
  return opened.project;
}

/** The quick answer of a house, and as many houses as it may be: each range a triangle, no first order, no joining of shifts. */
function sampled(project: Project, samples: number) {
  const { climate, loads } = evaluate(project, {}).plan.trades;
  if (!climate || !loads) throw new Error('both are built');
  const { house, site } = resolveProject(project);
  const day = required(climate.day);
  const months = required(climate.months);
  const weather = {
    night: required(climate.night),
    day,
    pressure: required(climate.pressure),
    groundMean: months.reduce((a, m) => a + m.mean, 0) / 12,
  };
  const planes = sunOnPlanes(day, scenario().of(site.groundReflectance));
  const model = (s: Scenario): number => sumOf(balance({ house, site, weather, planes }, s).heating);
  const inputs = rangesRead(model);
  const points = sobolPoints(inputs.length, samples, 7);
  const houses = Array.from({ length: samples }, (_, i) => {
    const places = new Map(inputs.map((g, d) => [g.path, points[i * inputs.length + d] ?? 0.5]));
    const numberFor = (g: Given) => (places.has(g.path) ? triangular(places.get(g.path) ?? 0.5, g) : undefined);
    return model(scenarioOf(numberFor));
  });
  const share = (below: number): number => houses.filter((h) => h < below).length / samples;
  return { answer: required(loads.heating), share };
}

it.each(['before-1940', '1940-1965', '1966-1980', 'since-2007'])(
  'the quick answer for a house of %s stands in the midst of the houses that its own ranges allow',
  (era) => {
    const { answer, share } = sampled(answersOf(era), 64);
    expect(share(answer.likely)).toBeGreaterThan(0.25);
    expect(share(answer.likely)).toBeLessThan(0.6);
    expect(share(answer.low)).toBeLessThan(0.05);
    expect(share(answer.high)).toBeGreaterThan(0.95);
  },
);

it('the first answers of Tern Ledge, with and without its fuel, hold what its rooms come to', () => {
  const loadsOf = (project: Project) => {
    const { loads } = evaluate(project, {}).plan.trades;
    if (!loads) throw new Error('the loads are built');
    return loads;
  };
  const rooms = required(loadsOf(tern).heating);
  const first = required(loadsOf(answersOf('1940-1965')).heating);
  const narrowed = required(loadsOf(answersOf('1940-1965', { fuel: tern.house?.fuel })).narrowed).heating;
  for (const { low, high } of [first, narrowed]) {
    expect(rooms.high).toBeGreaterThan(low);
    expect(rooms.likely).toBeLessThan(high);
  }
  expect(rooms.likely).toBeGreaterThan(narrowed.low);
});
