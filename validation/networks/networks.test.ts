import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import air from './loop_air_12.json' with { type: 'json' };
import { source } from './measure.ts';

checkSource(source, 93);

describe('a case file', () => {
  const measure = (file: unknown) => source.measureCase?.(file, '.') ?? [];
  const { results: _results, ...bare } = air;

  it('without results is held against its own laws', () => {
    const rows = measure(bare);
    expect(rows.map((r) => [r.field, r.ok])).toEqual([
      ['mass balance', true],
      ['pressure laws', true],
    ]);
  });

  it.each([
    ['no pipes', { ...bare, pipes: [] }, 'pipes: must be a list'],
    ['a diameter of 0', { ...bare, pipes: bare.pipes.map((p) => ({ ...p, diameter_mm: 0 })) }, 'pipes/0/diameter_mm'],
    ['an end that is nowhere', { ...bare, nodes: bare.nodes.slice(1) }, 'pipes/0/from: no node is named "FAN"'],
    [
      'a text for a demand',
      { ...bare, nodes: bare.nodes.map((n) => ({ ...n, demand_Lps: '3' })) },
      'nodes/0/demand_Lps',
    ],
    ['a name twice', { ...bare, nodes: [...bare.nodes, ...bare.nodes.slice(1, 2)] }, 'nodes/11/id: the name "P"'],
    ['a node of its own', { ...bare, nodes: [...bare.nodes, { id: 'Z', type: 'junction' }] }, 'node Z: not-joined'],
    ['a list', [], 'the file: must be an object'],
  ])('with %s says so', (_name, file, message) => {
    expect(() => measure(file)).toThrow(message);
  });
});
