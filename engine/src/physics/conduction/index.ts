export type { HeatDirection } from './films.ts';
export { airLayer, insideFilm, outsideFilm } from './films.ts';
export type { GroundFloor } from './ground.ts';
export { basementFloorU, basementWallU, crawlU, slabU } from './ground.ts';
export type { Layer, Resistance } from './uValue.ts';
export { combinedResistance } from './uValue.ts';
