import { lineTo, type Ways, wayTo } from '../reach.ts';
import type { Answer, Asked, Place, Wall } from '../result.ts';
import { fitsAt } from './fitsAt.ts';
import { soundsAt } from './soundsAt.ts';

/** What a place on a wall, or before it, would mean. `ways` of that wall. Within a millisecond. Source: `lineset.way`. */
export function answerAt(wall: Wall, ways: Ways, { unit, stock, slack, power }: Asked, place: Place): Answer {
  const line = lineTo(ways, unit, place);
  const needed = line === undefined ? undefined : wall.inside + line + slack;
  const k = needed === undefined ? -1 : stock.findIndex((s) => s.length >= needed - 1e-9);
  const set = stock[k];
  return {
    fits: fitsAt(wall, unit, place),
    way: wayTo(ways, unit, place),
    inSnow: Math.max(0, unit.baseLeast - place.z),
    ...(needed === undefined ? {} : { needed }),
    ...(set === undefined || needed === undefined ? {} : { stock: k, spare: set.length - needed }),
    ...(power === undefined ? {} : soundsAt(wall, unit, place, power)),
  };
}
