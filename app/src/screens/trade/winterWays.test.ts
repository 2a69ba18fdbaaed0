import { describe, expect, it } from 'vitest';
import { feelOf, waysOf } from './winterWays.ts';

const bin = (from: number, more: Partial<Record<'holding' | 'stopStart' | 'helped' | 'beyond', number>>) => ({
  from,
  holding: 0,
  stopStart: 0,
  helped: 0,
  beyond: 0,
  ...more,
});
const print = (t: number) => `${t} °C`;

describe('what a winter with a unit is like', () => {
  it('is even where it seldom stops, and says where help begins', () => {
    const winter = {
      bins: [bin(-15, { helped: 20, holding: 5 }), bin(0, { holding: 2000 })],
      width: 3,
      lowestKnown: true,
    };
    expect(feelOf(winter, print)).toMatch(/even warmth for hours.*20 hours a year, all below -12 °C/);
    expect(waysOf(winter).map((w) => [w.key, w.hours])).toEqual([
      ['holding', 2005],
      ['helped', 20],
    ]);
  });

  it('is restless where it stops in most hours', () => {
    const winter = { bins: [bin(0, { holding: 900, stopStart: 1100 })], width: 3, lowestKnown: true };
    expect(feelOf(winter, print)).toMatch(/coming and going.*holds by itself/);
  });

  it('is not told where the sheet has no lowest speed, nor where there is no winter', () => {
    expect(feelOf({ bins: [bin(0, { holding: 900 })], width: 3, lowestKnown: false }, print)).toMatch(
      /^Nobody can tell/,
    );
    expect(feelOf({ bins: [], width: 3, lowestKnown: true }, print)).toBeUndefined();
  });
});
