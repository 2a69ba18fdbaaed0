import type { AirFlows } from '../ductwork.ts';
import type { DamperPlace } from './places.ts';
import type { Shares } from './sharesOf.ts';
import { placeFlow } from './ways.ts';

/** m³/s that a room's registers give. */
export const roomFlow = (places: readonly DamperPlace[], room: string, flows: AirFlows): number =>
  places.reduce((a, p) => a + (p.room === room ? placeFlow(p, flows) : 0), 0);

/** What each room gets, as a part of its share (of 1) of what all of them get; a room without a share is left out. */
export function partsOf(places: readonly DamperPlace[], shares: Shares, flows: AirFlows): Shares {
  const all = places.reduce((a, p) => a + placeFlow(p, flows), 0);
  return Object.fromEntries(
    Object.entries(shares).flatMap(([room, share]) =>
      share > 0 && all > 0 ? [[room, roomFlow(places, room, flows) / (share * all)]] : [],
    ),
  );
}
