import { describe, expect, it } from 'vitest';
import { printerFor } from '../../index.ts';
import { inch } from '../../physics/exact.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import { changeWords } from './messages.ts';
import type { DuctSizingInput } from './setUp.ts';
import { sizeDucts } from './sizeDucts.ts';

const round = (id: string, inches: number): DuctSection => {
  const diameter = inches * inch;
  return {
    ...{ id, name: id, side: id === 'back' ? 'return' : 'supply', kind: 'round', diameter, length: 5 },
    ...{ area: (Math.PI / 4) * diameter ** 2, surface: Math.PI * diameter * 5, roughness: 9e-5, frictionFactor: 1 },
    ...{ lossCoefficient: 0, insulation: 0.025, leakage: 0, place: 'attic', supports: 2.4 },
  };
};
const each = (likely: number) => ({ low: likely, likely, high: likely });

/** Two rooms that want 0.08 m³/s each, each on its own 5 m at the unit; 6 and 8 in are to be had, at 10 and 14 a metre, 4 and 6 an end. */
function asked(rooms: readonly DuctSection[], there: readonly string[]) {
  const sections = [...rooms, round('back', 14)];
  const terminals = sections.map(({ id }) => ({
    ...{ id: `at-${id}`, name: id, section: id, room: id, faceArea: 0.05, freeArea: 0.04, resistance: 100 },
  }));
  const points = [0, 1].map((flow) => ({ flow, pressure: 200 }));
  const model: AirModel = {
    ...{ sections, terminals, added: 0, pressure: 101_325 },
    filter: { pressure: 10, velocity: 1.5, exponent: 1.5, area: 0.3 },
    blower: { filterIncluded: true, tables: [{ setting: '', points }], points } as unknown as AirModel['blower'],
  };
  const input: DuctSizingInput = {
    ...{ model, fittings: {}, rooms: { a: 0.08, b: 0.08 }, flow: 0.16, bought: { back: 'it' }, there },
    stock: { listed: [6, 8].map((d) => ({ kind: 'round', diameter: d * inch })), only: ['round'] },
    prices: {
      'round 152': { run: each(10), end: each(4), bend: each(0) },
      'round 203': { run: each(14), end: each(6), bend: each(0) },
    },
  };
  return sizeDucts(input);
}
const best = (d: ReturnType<typeof asked>) => {
  if (d.sizing.status !== 'fits') throw new Error('it fits');
  return { money: d.sizing.best.totals.money, labour: d.sizing.best.totals.labour, changed: d.changed };
};
/** 8 in of 5 m: a tenth more than it runs at 14, two ends at 6. 6 in is too fast: 0.08 / 0.0182 = 4.4 m/s, above 3.56. */
const eight = 5 * 1.1 * 14 + 2 * 6;

describe('a duct that is there already', () => {
  it('costs nothing at its size, money and work, and the new ones are bought whole', () => {
    expect(best(asked([round('a', 8), round('b', 8)], ['a', 'b']))).toEqual({ money: 0, labour: 0, changed: [] });
    expect(best(asked([round('a', 8), round('b', 8)], [])).money).toBeCloseTo(2 * eight, 2);
    expect(best(asked([round('a', 8), round('b', 8)], ['a'])).money).toBeCloseTo(eight, 2);
  });

  it('is made new where it is too small, at the whole price of the new duct, and only that one', () => {
    const d = asked([round('a', 6), round('b', 8)], ['a', 'b']);
    expect(best(d).money).toBeCloseTo(eight, 2);
    expect(best(d).changed).toEqual(['a']);
    expect(changeWords(d, 'a', printerFor('us'))).toMatch(/The old duct comes out/);
    expect(d.drawn.totals.money).toBe(0);
  });

  it('stays in a size that no shop has', () => {
    expect(best(asked([round('a', 7), round('b', 8)], ['a', 'b']))).toEqual({ money: 0, labour: 0, changed: [] });
  });
});
