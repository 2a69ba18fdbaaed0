import type { ResolvedProject } from '@kneewall/project';
import { besideMiddle, dropAt, halfWidth, middleSpeed, reachDown, throwConstants } from '../../physics/jet/index.ts';
import type { Scenario } from '../../plan/scenario.ts';
import { type TerminalInput, terminalOf } from '../model.ts';
import { belowCeiling } from './coldDropFindings.ts';
import { blowingOf, distanceOf } from './outlet.ts';

export type Room = ResolvedProject['house']['rooms'][string];
export type RestPlace = Room['rest'][string];

/** m above the floor of a head that lies and of one that sits. Source: `air.draught`. */
const headHeights = { bed: 0.6, cot: 0.6, sofa: 1.1 } as const;

/** m above the floor of the middle of a register low in a wall. Common practice. */
const aboveFloor = 0.2;
/** m that every way is at least. */
const nearest = 1e-3;

/** Air as it leaves a register: m³/s, K above the room, and the room, °C. */
export type Leaving = { readonly flow: number; readonly excess: number; readonly indoor: number };

/** A jet's way to where it passes nearest: m gone, m beside its middle, and where half of its speed is left. */
export type Passing = {
  readonly k: number;
  readonly velocity: number;
  readonly area: number;
  readonly way: number;
  readonly beside: number;
  readonly half: number;
  /** m/s in its middle, and at the place. */
  readonly middle: number;
  readonly speed: number;
};

/**
 * How a register's air passes a place of rest, by the way on which it is fastest there: across below the ceiling, down
 * the far wall, straight down, up, or along the floor. Cold air of a register in a wall falls on its way as a free jet; warm air goes
 * down no further than its buoyancy lets it. Still air beside the ways of a jet is taken as still: no room's own slow
 * turning is counted. Ends the enclosing attempt where a size or a distance is missing. Source: `air.draught`.
 */
export function passing(
  id: string,
  input: TerminalInput,
  room: Room,
  place: RestPlace,
  air: Leaving,
  s: Scenario,
): Passing {
  const { freeArea: area } = terminalOf(id, input, s);
  const velocity = air.flow / area;
  const blowing = blowingOf(input, s);
  const k = throwConstants[blowing.outlet];
  const jet = { velocity, area, excess: air.excess, room: air.indoor };
  const away = s.of(place.distance);
  const height = s.maybe(place.height) ?? headHeights[s.choice(place.kind)];
  const high = s.choice(input.place) === 'high';
  const top = Math.max(height, s.of(room.height) - (high ? belowCeiling : 0));
  const at = (way: number, beside: number): Passing => {
    const half = halfWidth(way, area);
    const middle = middleSpeed(Math.max(way, nearest), k, velocity, area);
    const speed = middle * besideMiddle(beside, half);
    return { k, velocity, area, way: Math.max(way, nearest), beside, half, middle, speed };
  };
  // Straight off a low wall it comes along the floor first, and rises or not as warm as it is.
  if (s.choice(input.place) === 'low') return at(away, Math.abs(Math.max(0, aboveFloor - dropAt(away, jet)) - height));
  if (blowing.way === 'up') return at(height, away);
  const drop = top - height;
  const down = air.excess > 0 ? Math.min(drop, reachDown(jet)) : drop;
  // Warm air that turns back above the place is nearest at its lowest.
  const after = (before: number, aside: number) => at(before + down, Math.hypot(aside, drop - down));
  if (blowing.way === 'down') return after(0, away);
  const fall = high ? Math.max(0, dropAt(away, jet)) : 0;
  const across = at(away, Math.abs(drop - fall));
  const wall = distanceOf(input, room, blowing, s);
  const along = after(wall, Math.max(0, wall - away));
  return along.speed > across.speed ? along : across;
}
