import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { airByMonth } from './roomAir.ts';

const is = (value: number) => ({ value, known: 'measured' as const });

/** Tern Ledge with other walls: every month of its climate is entered. */
function walls(assembly: object): Project {
  const project = demo('tern-ledge');
  const house = { ...project.house, assemblies: { ...project.house?.assemblies, 'old-wall': assembly } };
  return { ...project, house } as Project;
}
function found(id: string, project: Project): Finding {
  const finding = evaluate(project, {}, { units: 'si' }).plan.findings.find((f) => f.id === id);
  if (!finding) throw new Error(`${id} is not there`);
  return finding;
}
const wet = (assembly: object): Finding => found('loads/wet-layers:old-wall', walls(assembly));
const likely = (f: Finding): number => (typeof f.value === 'object' ? f.value.likely : Number.NaN);

const layer = (order: string, d: number, k: number, mu: number, more: object = {}) => ({
  order,
  thickness: is(d),
  conductivity: is(k),
  vapourFactor: is(mu),
  ...more,
});
const board = layer('a', 0.0127, 0.16, 10, { name: 'Board' });
const wool = layer('c', 0.14, 0.04, 1, { name: 'Wool' });
const plywood = layer('d', 0.0125, 0.13, 70, { name: 'Plywood' });
const film = { order: 'b', name: 'Film', resistance: is(0), stillAir: is(50) };

describe('water inside a wall', () => {
  it('gathers where nothing holds vapour back on the warm side, and says where', () => {
    const f = wet({ layers: { board, wool, plywood } });
    expect(f).toMatchObject({ status: 'fails', holdPoint: 'close', consequence: 'damage', unit: 'kg/m²' });
    expect(f.what).toContain('between “Wool” and “Plywood”');
    expect(f.why).toContain('leaking air');
  });

  it('stays away behind a film on the warm side, not behind one on the cold side', () => {
    expect(wet({ layers: { board, film, wool, plywood } })).toMatchObject({ status: 'ok', value: { likely: 0 } });
    const outside = wet({ layers: { board, wool, film: { ...film, order: 'c1' }, plywood } });
    expect(outside.status).toBe('fails');
    expect(outside.limit).toEqual({ max: 0 });
    expect(outside.what).toContain('year by year');
  });

  it('hangs on the paint, unless the innermost layer says how it holds vapour', () => {
    const said = { order: '0', name: 'Paint', resistance: is(0), stillAir: is(3) };
    const painted = wet({ layers: { said, board, wool, plywood } });
    const unsaid = wet({ layers: { board, wool, plywood } });
    expect(likely(painted)).toBeLessThan(likely(unsaid));
    expect(unsaid.why).toContain('with paint');
    expect(painted.why).not.toContain('with paint');
  });

  it('is less with an outer skin that lets more vapour out', () => {
    const open = wet({ layers: { board, wool, plywood: { ...plywood, vapourFactor: is(20) } } });
    expect(likely(open)).toBeLessThan(likely(wet({ layers: { board, wool, plywood } })));
  });

  it('is unknown, with all that is missing, where layers or their vapour factors are', () => {
    const bare = {
      layers: { board: { ...board, vapourFactor: undefined }, wool: { ...wool, vapourFactor: undefined } },
    };
    const f = wet(bare);
    expect(f).toMatchObject({ status: 'unknown', because: 'missing' });
    expect(f.needs).toEqual(['board', 'wool'].map((id) => `house.assemblies.old-wall.layers.${id}.vapourFactor`));
    expect(wet({})).toMatchObject({ status: 'unknown', needs: ['house.assemblies.old-wall.common'] });
    expect(wet({ common: 'wall-log', uValue: is(6.5) })).toMatchObject({ status: 'unknown', because: 'out-of-range' });
    expect(wet({ uValue: is(0) })).toMatchObject({ status: 'unknown', because: 'out-of-range' });
    expect(wet({ layers: { board: { ...board, stillAir: is(0) } } })).toMatchObject({ because: 'out-of-range' });
    expect(wet({ layers: { board: { ...board, conductivity: is(0) } } })).toMatchObject({ because: 'out-of-range' });
  });

  it('is close where only damp rooms wet it: too much at once, or some that stays', () => {
    expect(wet({ common: 'wall-thin' })).toMatchObject({ status: 'tight', limit: { max: 0.2 } });
    const stays = wet({ common: 'roof-batt' });
    expect(stays).toMatchObject({ status: 'tight', limit: { max: 0 }, value: { low: 0, likely: 0 } });
    expect(stays.what).toContain('some stays');
  });

  it('takes the usual layers of a construction that was chosen, and says so', () => {
    const f = wet({ common: 'wall-r19' });
    expect(f.status).toBe('ok');
    expect(f.why).toContain('usually has');
    const byU = wet({ uValue: is(0.4) });
    expect(byU.status).toBe('ok');
    expect(byU.why).toContain('Only its heat flow was entered');
  });
});

describe('mould', () => {
  it('is told of the coldest construction, which better insulation warms', () => {
    const of = (u: number) => {
      const project = walls({ uValue: is(u) });
      return found(u > 1 ? 'loads/mould:old-wall' : 'loads/mould:kneewall', project);
    };
    expect(of(3.2)).toMatchObject({ status: 'fails', holdPoint: 'close' });
    expect(of(2.4).status).toBe('tight');
    expect(likely(of(1.2))).toBeGreaterThan(likely(of(2.4)));
    expect(of(0.3).status).toBe('ok');
  });
});

describe('the air of rooms', () => {
  const given = (value: number) =>
    ({ path: 'x', kind: 'number', known: 'measured', low: value, likely: value, high: value }) as const;
  const set = {
    heating: given(20),
    cooling: given(24),
    humidity: given(0.5),
    nightSetback: given(0),
    nightFrom: given(22),
    nightTo: given(6),
    thermostat: undefined,
  };
  const s = { of: (g: { likely: number }) => g.likely };
  const month = { month: 2, dailyRange: 8, wind: 3, clearness: 0.5, sun: 4, relativeHumidity: 0.8 };
  const at = (mean: number) => airByMonth(set, [{ ...month, mean }], 2, s as never)[0];

  it('is warmer and damper than outdoors in the cold, cooled and dried in the heat', () => {
    // 0.8 x 259.333 Pa over ice at -10 °C, and 540 Pa of class 2.
    expect(at(-10)).toMatchObject({ indoor: 20, outdoor: -10, days: 28 });
    expect(at(-10)?.indoorVapour).toBeCloseTo(747.4666, 3);
    expect(at(22)?.indoor).toBe(22);
    expect(at(30)?.indoor).toBe(24);
    // Half of what air at 24 °C holds by the Magnus form.
    expect(at(30)?.indoorVapour).toBeCloseTo((610.5 * Math.exp((17.269 * 24) / 261.3)) / 2, 9);
  });
});
