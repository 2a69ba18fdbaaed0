import { describe, expect, it } from 'vitest';
import { compileNetwork, type NetworkLink, type NetworkSpec, networkProblems, solveNetwork } from './index.ts';

const duct = (id: string, from: string, to: string): Extract<NetworkLink, { kind: 'duct' }> => ({
  id,
  kind: 'duct',
  from,
  to,
  length: 5,
  diameter: 0.2,
  area: 0.0314,
  roughness: 0.0001,
  density: 1.2,
  viscosity: 1.8e-5,
});
const fan = (pressures: readonly number[], flows: readonly number[] = [0, 0.1, 0.2]): NetworkLink => ({
  id: 'fan',
  kind: 'fan',
  from: 'room',
  to: 'a',
  points: pressures.map((pressure, i) => ({ flow: flows[i] ?? 0, pressure })),
});
const good: NetworkSpec = {
  nodes: [{ id: 'room', pressure: 0 }, { id: 'a' }, { id: 'b' }],
  links: [fan([100, 50, 0]), duct('x', 'a', 'b'), duct('y', 'b', 'room')],
};
const withLinks = (...links: NetworkLink[]): NetworkSpec => ({ ...good, links: [...good.links, ...links] });

describe('problems of a network', () => {
  it('has none where there is none', () => {
    expect(networkProblems(good)).toEqual([]);
  });

  it.each([
    ['a node that no way leads to', { ...good, nodes: [...good.nodes, { id: 'c' }] }, 'not-joined', 'c'],
    [
      'two nodes on their own',
      { nodes: [...good.nodes, { id: 'c' }, { id: 'd' }], links: [...good.links, duct('z', 'c', 'd')] },
      'not-joined',
      'c',
    ],
    ['no held pressure at all', { ...good, nodes: [{ id: 'room' }, { id: 'a' }, { id: 'b' }] }, 'not-joined', 'room'],
    ['a diameter of nothing', withLinks({ ...duct('z', 'a', 'b'), diameter: 0 }), 'value', 'z'],
    ['a length that is no number', withLinks({ ...duct('z', 'a', 'b'), length: Number.NaN }), 'value', 'z'],
    ['a duct that takes no pressure', withLinks({ ...duct('z', 'a', 'b'), length: 0 }), 'no-resistance', 'z'],
    ['a link back to its own node', withLinks(duct('z', 'a', 'a')), 'to-itself', 'z'],
    ['everything leaking away', withLinks({ ...duct('z', 'a', 'b'), arrive: 0 }), 'value', 'z'],
    [
      'an exponent of 3',
      withLinks({ id: 'z', kind: 'power', from: 'a', to: 'b', coefficient: 1, exponent: 3 }),
      'value',
      'z',
    ],
    ['two nodes of one name', { ...good, nodes: [...good.nodes, { id: 'a' }] }, 'node-twice', 'a'],
    ['two links of one name', withLinks(duct('x', 'a', 'b')), 'link-twice', 'x'],
    [
      'a fan table out of order',
      { ...good, links: [fan([100, 50, 0], [0, 0.2, 0.1]), ...good.links.slice(1)] },
      'points-order',
      'fan',
    ],
    ['a fan table of one point', { ...good, links: [fan([100]), ...good.links.slice(1)] }, 'value', 'fan'],
  ] satisfies [string, NetworkSpec, string, string][])('%s is named, and not solved', (_name, spec, code, id) => {
    expect(networkProblems(spec)).toContainEqual(expect.objectContaining({ code, id }));
    const { converged, flows, pressures } = solveNetwork(compileNetwork(spec));
    expect(converged).toBe(false);
    expect([...flows, ...pressures].every(Number.isFinite)).toBe(true);
  });

  it('a link to a node that is not there is named', () => {
    expect(networkProblems(withLinks(duct('z', 'a', 'nowhere')))).toEqual([
      { code: 'node-unknown', at: 'link', id: 'z', field: 'to', found: 'nowhere' },
    ]);
  });

  it('a loop that nothing drives is named, and still', () => {
    const spec: NetworkSpec = { ...good, links: [duct('w', 'room', 'a'), ...good.links.slice(1)] };
    expect(networkProblems(spec)).toEqual([{ code: 'idle', at: 'network', id: '' }]);
    const { converged, flows } = solveNetwork(compileNetwork(spec));
    expect(converged).toBe(true);
    expect([...flows]).toEqual([0, 0, 0]);
  });

  it('sizes beyond all arithmetic end in no answer, not in what is no number', () => {
    const spec = withLinks({ ...duct('z', 'a', 'b'), length: 1e300, area: 1e-150 });
    const { converged, flows, pressures } = solveNetwork(compileNetwork(spec));
    expect([...flows, ...pressures].every(Number.isFinite)).toBe(true);
    expect(converged).toBe(false);
  });

  it('a fan table that rises is named, and ends in an answer or says that it has none', () => {
    const spec: NetworkSpec = { ...good, links: [fan([50, 90, 0]), ...good.links.slice(1)] };
    expect(networkProblems(spec)).toEqual([
      { code: 'several', at: 'link', id: 'fan', field: 'points/1/pressure', found: 90 },
    ]);
    const { flows, pressures, iterations } = solveNetwork(compileNetwork(spec));
    expect(iterations).toBeLessThanOrEqual(100);
    expect([...flows, ...pressures].every(Number.isFinite)).toBe(true);
  });
});
