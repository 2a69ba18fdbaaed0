import { checkProject, type Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../index.ts';
import { heatOfWinter, lossOfWinter } from './fuel.ts';

const bins = [
  { centre: -15, hours: 200 },
  { centre: -6, hours: 900 },
  { centre: 3, hours: 2400 },
  { centre: 12, hours: 3000 },
  { centre: 21, hours: 2260 },
];

describe('the loss that a winter’s heat tells', () => {
  it('is heat over degree-hours where nothing else warms the house', () => {
    // 35·200 + 26·900 + 17·2400 + 8·3000 = 95,200 degree-hours at 20 °C.
    expect(lossOfWinter(bins, 19_040, 20, 0)).toBeCloseTo(200, 9);
  });

  it('gives back the loss that took the heat, whatever people and appliances give', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 800, noNaN: true }),
        fc.double({ min: 5, max: 26, noNaN: true }),
        fc.double({ min: 0, max: 600, noNaN: true }),
        (loss, indoor, gains) => {
          const heat = heatOfWinter(bins, loss, indoor, gains);
          fc.pre(heat > 1e-3);
          expect(lossOfWinter(bins, heat, indoor, gains) / loss).toBeCloseTo(1, 9);
        },
      ),
      { seed: 20261125 },
    );
  });
});

const is = (value: number | { low: number; likely: number; high: number }) => ({ value, known: 'estimated' as const });
const answers = {
  schema: 1,
  site: { latitude: is(44), elevation: is(200), coldNight: is(-20), hotAfternoon: is(31) },
  house: { floorArea: is(95), people: { count: is(2), appliances: is(400) } },
};
const project = (document: unknown): Project => {
  const opened = checkProject(document);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems[0]));
  return opened.project;
};
const planWith = (fuel: object) => evaluate(project({ ...answers, house: { ...answers.house, fuel } }), {}).plan;
const told = (plan: ReturnType<typeof planWith>) => {
  const { loads } = plan.trades;
  if (!loads?.narrowed.ok || !loads.heating.ok) throw new Error(JSON.stringify(loads?.narrowed));
  return { ...loads.narrowed.value, house: loads.heating.value };
};
const width = (r: { low: number; high: number }) => r.high - r.low;
const oil = (kWh: Parameters<typeof is>[0]) => ({ kind: 'oil', energy: is(kWh), efficiency: is(0.8), indoor: is(19) });
/** The heat need's likely value where the fuel says just what the house says. */
const agreeing = (() => {
  const { loads } = planWith({}).trades;
  const { loads: burned } = planWith(oil(1000)).trades;
  if (!loads?.lossPerDegree.ok || !burned?.winter.ok) throw new Error('the answers suffice');
  return burned.winter.value.computed.likely / 0.8 / 1.1;
})();

describe('last winter’s fuel beside the house as entered', () => {
  it('narrows the heat need where both agree, and says what is still unknown', () => {
    const { verdict, house, heating, lossPerDegree } = told(planWith(oil(agreeing)));
    expect(verdict).toBe('narrows');
    expect(width(heating)).toBeLessThan(0.9 * width(house));
    expect(heating.low).toBeGreaterThanOrEqual(house.low);
    expect(heating.high).toBeLessThanOrEqual(house.high);
    expect(lossPerDegree.likely * 40).toBeCloseTo(heating.likely, 6);
    expect(heating.drivers.some((d) => d.path.startsWith('house.fuel'))).toBe(true);
  });

  it('contradicts a house that would have taken many times as much: nothing is narrowed, and the finding says so', () => {
    const plan = planWith(oil(agreeing / 8));
    const { verdict, house, heating } = told(plan);
    expect(verdict).toBe('contradicts');
    expect(heating).toEqual(house);
    const finding = plan.findings.find((f) => f.id === 'loads/winter-fuel');
    expect(finding?.status).toBe('fails');
    expect(finding?.what).toContain('narrows nothing');
  });

  it('changes nothing where it is known too roughly', () => {
    const { verdict, house, heating } = told(
      planWith(oil({ low: agreeing / 6, likely: agreeing, high: 20 * agreeing })),
    );
    expect(verdict).toBe('adds-nothing');
    expect(heating).toEqual(house);
  });

  it('leaves the candidates to be judged on the house as entered', () => {
    const load = (fuel: object) => planWith(fuel).trades.loads?.heating;
    expect(load(oil(agreeing))).toEqual(load({}));
  });

  it('takes the share that reached the rooms from the fuel where nobody entered it', () => {
    const spreadOf = (kind: string) =>
      told(planWith({ kind, energy: is(agreeing), indoor: is(19) })).fuel.lossPerDegree;
    expect(spreadOf('electricity').likely).toBeGreaterThan(1.2 * spreadOf('wood').likely);
  });

  it.each([
    ['no fuel', { kind: 'oil' }, 'missing', 'house.fuel.energy'],
    ['no energy in it', oil(0), 'out-of-range', 'house.fuel.energy'],
    [
      'a house kept colder than any hour outdoors',
      { ...oil(9000), indoor: is(-60) },
      'out-of-range',
      'house.fuel.indoor',
    ],
  ])('with %s it tells nothing, and says why', (_name, fuel, because, path) => {
    const plan = planWith(fuel);
    expect(plan.trades.loads?.narrowed).toEqual({ ok: false, because, paths: [path] });
    const { what, mend } = plan.findings.find((f) => f.id === 'loads/winter-fuel') ?? { what: '', mend: '' };
    expect(`${what} ${mend}`).not.toMatch(/NaN|Infinity|data sheet/);
  });
});
