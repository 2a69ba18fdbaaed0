import { describe, expect, it } from 'vitest';
import { commonU } from '../constructions.ts';
import { filmsOf, layersOfU } from './wallLayers.ts';

const common = [
  'wall-empty',
  'wall-thin',
  'wall-r11',
  'wall-r19',
  'wall-r20-continuous',
  'wall-stone',
  'wall-log',
  'wall-block',
  'wall-block-foam',
  'wall-concrete-foam',
  'wall-panel',
  'wall-straw',
  'ceiling-bare',
  'ceiling-r7',
  'ceiling-r11',
  'ceiling-r19',
  'ceiling-r30',
  'ceiling-r49',
  'ceiling-sawdust',
  'roof-batt',
  'roof-foam',
  'floor-bare',
  'floor-r11',
  'floor-r19',
  'floor-r30',
  'door-wood',
];

describe('layers of a common construction', () => {
  it.each(common)('%s: have the U of its range at both ends, and a weight that such things have', (name) => {
    const kind = name.startsWith('ceiling')
      ? 'ceiling'
      : name.startsWith('roof')
        ? 'roof'
        : name.startsWith('floor')
          ? 'floor'
          : name.startsWith('door')
            ? 'door'
            : 'wall';
    const direction = kind === 'floor' ? 'down' : kind === 'wall' || kind === 'door' ? 'horizontal' : 'up';
    const films = filmsOf(direction, kind === 'ceiling' || kind === 'floor');
    const { low, likely, high } = commonU({ path: 'x', choice: name, known: 'entered' });
    for (const u of [low, likely, high]) {
      const layers = layersOfU(kind, u, films, name);
      const r = layers.reduce((a, l) => a + ('resistance' in l ? l.resistance : l.thickness / l.conductivity), 0);
      expect(1 / (r + films) / u).toBeCloseTo(1, 6);
      const weight = layers.reduce((a, l) => a + ('resistance' in l ? 0 : l.thickness * l.density), 0);
      expect(weight).toBeGreaterThan(5);
      expect(weight).toBeLessThan(1000);
    }
  });
});
