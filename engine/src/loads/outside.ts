import type { GroundFloor } from '../physics/conduction/index.ts';

/** Film on the outside in the sun, W/(m²K), and what a clear sky takes off a roof, K. Source: `loads.sol-air`. */
export const sunFilm = 22.7;
export const skyDrop = 3.9;

/** Ground of sand or gravel round a wall 0.3 m thick; m² and m of edge. Source: `iso-13370.slab`. */
export const groundFloor = (area: number, perimeter: number): GroundFloor => ({ area, perimeter, soil: 2, wall: 0.3 });

/** An ordinary crawl space: uninsulated walls half a metre high, vents in m² per m of edge. Source: `iso-13370.slab`. */
export const crawlSpace = { wallU: 1.7, height: 0.5, vents: 0.0015, wind: 4, windShield: 0.05 } as const;

/** The four sides that a roof or a quick house looks to, degrees. */
export const fourSides = [0, 90, 180, 270] as const;
