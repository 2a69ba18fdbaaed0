/** A refrigerant that burns: its class and the least share that does, kg/m³. */
export type Flammable = { readonly group: 'A2L' | 'A3'; readonly least: number };

/** Where the unit lets air into the room: the height that counts, m. Source: `lineset.room-rule`. */
export const releaseHeights = { floor: 0.6, window: 1, wall: 1.8, ceiling: 2.2 } as const;

/** kg up to which no room is too small. Source: `lineset.room-rule`. */
export const chargeFree = ({ group, least }: Flammable): number => (group === 'A2L' ? 6 : 4) * least;

/** kg above which a room's area no longer settles it. Source: `lineset.room-rule`. */
export const chargeBeyond = ({ group, least }: Flammable): number => (group === 'A2L' ? 52 : 26) * least;

/**
 * kg that a room of `area` m² may take, its air let in at `height` m: the root law, and for mildly flammable ones the
 * smaller of that and the straight one. Source: `lineset.room-rule`.
 */
export function chargeMost({ group, least }: Flammable, area: number, height: number): number {
  const root = 2.5 * least ** 1.25 * height * Math.sqrt(area);
  return group === 'A2L' ? Math.min(root, 0.75 * least * height * area) : root;
}

/** m² that a charge of `mass` kg needs by the root law. Source: `lineset.room-rule`. */
export const areaLeast = ({ least }: Flammable, mass: number, height: number): number =>
  (mass / (2.5 * least ** 1.25 * height)) ** 2;
