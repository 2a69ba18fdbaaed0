import { describe, expect, it } from 'vitest';
import { atticVapour, deckTemperature } from './index.ts';

describe('air in an attic', () => {
  it('is as damp as its two streams mixed, by hand', () => {
    // (0.01 x 1000 + 0.09 x 300) / 0.1
    expect(atticVapour({ up: 0.01, vents: 0.09, rooms: 1000, outdoors: 300 })).toBeCloseTo(370, 9);
  });

  it('is outdoor air where nothing leaks up, and room air where nothing passes the vents', () => {
    expect(atticVapour({ up: 0, vents: 0.09, rooms: 1000, outdoors: 300 })).toBeCloseTo(300, 9);
    expect(atticVapour({ up: 0.01, vents: 0, rooms: 1000, outdoors: 300 })).toBeCloseTo(1000, 9);
  });
});

describe('the underside of a deck', () => {
  it('lies between the air below it and the roof, by their resistances', () => {
    // Films 0.1 and 0.04, boards 1/3: -5 - 5 x 0.1 / 0.4733333
    expect(deckTemperature({ attic: -5, roof: -10, total: 0.1 + 1 / 3 + 0.04, film: 0.1 })).toBeCloseTo(-6.056338, 6);
    expect(deckTemperature({ attic: -5, roof: -5, total: 0.5, film: 0.1 })).toBe(-5);
  });
});
