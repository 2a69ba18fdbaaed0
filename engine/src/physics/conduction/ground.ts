/** A floor on or above the ground: m² and m of exposed edge, soil W/(mK), wall thickness m. */
export type GroundFloor = {
  readonly area: number;
  readonly perimeter: number;
  readonly soil: number;
  readonly wall: number;
};

const characteristic = (f: GroundFloor): number => f.area / (f.perimeter / 2);

/**
 * U of a slab on the ground, W/(m²K); `insulation` m²K/W all over the slab. Source: `iso-13370.slab` (from memory).
 */
export function slabU(floor: GroundFloor, insulation: number): number {
  const b = characteristic(floor);
  const d = floor.wall + floor.soil * (0.17 + insulation + 0.04);
  return d < b
    ? ((2 * floor.soil) / (Math.PI * b + d)) * Math.log((Math.PI * b) / d + 1)
    : floor.soil / (0.457 * b + d);
}

/**
 * U of a floor over a vented crawl space, W/(m²K). `floorU` air to air, `wallU` of the walls round the space, `height`
 * m of floor above ground, `vents` m² per m of edge, wind m/s. Source: `iso-13370.suspended` (from memory).
 */
export function crawlU(
  floor: GroundFloor,
  space: { floorU: number; wallU: number; height: number; vents: number; wind: number; windShield: number },
): number {
  const b = characteristic(floor);
  const ground = slabU(floor, 0);
  const around = (2 * space.height * space.wallU) / b + (1450 * space.vents * space.wind * space.windShield) / b;
  return 1 / (1 / space.floorU + 1 / (ground + around));
}

/** Mean U of a basement wall to a depth, soil 1.4 W/(mK), `r` m²K/W of the wall. Source: `latta-boileau` (from memory). */
export function basementWallU(depth: number, r: number): number {
  const k = 1.4;
  const start = (2 * k * r) / Math.PI;
  return ((2 * k) / (Math.PI * depth)) * (Math.log(depth + start) - Math.log(start));
}

/** Mean U of a basement floor, width and depth m. Source: `latta-boileau` (from memory). */
export function basementFloorU(width: number, depth: number, r: number): number {
  const k = 1.4;
  const start = depth / 2 + (k * r) / Math.PI;
  return ((2 * k) / (Math.PI * width)) * (Math.log(width / 2 + start) - Math.log(start));
}
