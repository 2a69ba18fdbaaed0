import type { Range, ResolvedProject } from '@kneewall/project';
import type { Outlet } from '../../physics/jet/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { asGiven } from '../asGiven.ts';
import type { TerminalInput } from '../model.ts';

type Room = ResolvedProject['house']['rooms'][string];

/** How far the far wall may be from a register, as a share of the side of a square room. Source: `air.throw`. */
const acrossRoom = { low: 0.7, likely: 1, high: 1.3 } as const;

export type Blowing = {
  readonly outlet: Outlet;
  /** `across`: along ceiling or wall to the far side. `up`: from below, along the wall or free. `down`: into the room. */
  readonly way: 'across' | 'up' | 'down';
};

/** What kind of outlet a register is and which way its jet goes. */
export function blowingOf(t: TerminalInput, s: Scenario): Blowing {
  const [place, blows] = [s.choice(t.place), s.choice(t.blows)];
  const fanned = blows === 'fanned' || blows === 'round';
  if (place === 'low') return { outlet: fanned ? 'low wall fanned' : 'low wall straight', way: 'up' };
  if (place === 'floor') return { outlet: fanned ? 'floor fanned' : 'floor straight', way: 'up' };
  const way = blows === 'down' ? 'down' : 'across';
  if (place === 'high') return { outlet: fanned ? 'high wall fanned' : 'high wall straight', way };
  const ceiling = { straight: 'ceiling one way', fanned: 'ceiling fanned', round: 'ceiling round' } as const;
  return { outlet: blows === 'down' ? 'high wall straight' : ceiling[blows], way };
}

/** m that a jet has to go: to the far wall, or up to the ceiling. Undrawn rooms are taken as about square. */
export function distanceOf(t: TerminalInput, room: Room | undefined, { outlet, way }: Blowing, s: Scenario): number {
  if (!room) return unresolved('missing', `house.rooms.${t.room ?? '*'}.floorArea`);
  if (way === 'up') return s.of(room.height);
  const entered = s.maybe(t.distance);
  if (entered !== undefined) return entered > 0 ? entered : unresolved('out-of-range', t.distance.path);
  const side = Math.sqrt(s.of(room.floorArea));
  // One that blows all round sits in the middle, half as far from every wall.
  return side * s.of(asGiven(`${room.floorArea.path}#side`, 'number', outlet === 'ceiling round' ? half : acrossRoom));
}

const half: Range = { low: acrossRoom.low / 2, likely: acrossRoom.likely / 2, high: acrossRoom.high / 2 };
