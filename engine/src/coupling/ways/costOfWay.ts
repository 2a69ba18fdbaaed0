import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import type { HouseInputs } from '../../loads/dynamic/houseInputs.ts';
import type { DuctsInputs } from '../ducted/ductworks.ts';
import { type Cost, masticMoney, plus, scaled } from '../houseYear/measures.ts';
import type { WayId } from './ways.ts';

/** Money as people pay it, low, likely and high: for each metre wrapped, buried; for each section made anew; to build a way for it inside. Source: `ways.costs` (common practice). */
const wrapMetre = [6, 15, 35] as const;
const buryMetre = [4, 10, 25] as const;
const newMetre = [10, 25, 60] as const;
const boxIn = [800, 3000, 9000] as const;
/** To insulate and seal the slope over a space behind a knee wall, with a door into it. */
const kneeSpace = [600, 2000, 5000] as const;
/** For each small unit in a room, installed, in place of one unit and its ducts. */
const roomUnit = [1500, 3200, 6000] as const;
/** m² of floor from which a room wants a unit of its own; smaller ones and halls live off their neighbours. */
const ownUnit = 9;

/** What a way costs beside leaving the ducts as they are. */
export function costOfWay(way: WayId, { model }: DuctsInputs, best: AirModel | undefined, rooms: number): Cost {
  const outside = model.sections.filter((x) => x.place !== 'inside');
  const metres = (sections: readonly DuctSection[]): number => sections.reduce((a, x) => a + x.length, 0);
  const sealing = scaled(1, masticMoney);
  const wrapping = plus(sealing, scaled(metres(outside), wrapMetre));
  if (way === 'as-drawn') return scaled(0, masticMoney);
  if (way === 'sealed') return sealing;
  if (way === 'wrapped') return wrapping;
  if (way === 'rooms') return scaled(rooms, roomUnit);
  if (way === 'kneewall') return plus(scaled(1, kneeSpace), scaled(metres(outside), newMetre));
  if (way === 'buried') return plus(wrapping, scaled(metres(outside), buryMetre));
  if (way === 'inside') return plus(scaled(1, boxIn), scaled(metres(model.sections), newMetre));
  const changed = model.sections.filter((x) => best?.sections.find((y) => y.id === x.id)?.area !== x.area);
  return plus(wrapping, scaled(metres(changed), newMetre));
}

/** How many small units a house without ducts wants: one for each room that is no passage or bath and not small, at least one. */
export const roomUnits = ({ shell }: Pick<HouseInputs, 'shell'>): number =>
  Math.max(1, shell.rooms.filter((r) => r.floorArea >= ownUnit && !['hall', 'bath', 'store'].includes(r.use)).length);
