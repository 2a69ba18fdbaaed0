import { slabU } from '../../physics/conduction/index.ts';
import { firstHarmonic } from '../../physics/firstHarmonic.ts';
import { groundFloor } from '../outside.ts';

/** The year's outdoor temperature as one wave: its mean, half its range, and the month in which it is lowest. */
export type YearWave = { readonly mean: number; readonly amplitude: number; readonly coldest: number };

/** The wave of twelve monthly means, °C. */
export function waveOf(months: readonly number[]): YearWave {
  const { mean, amplitude, lowest } = firstHarmonic(months);
  return { mean, amplitude, coldest: 12 * lowest };
}

// Periodic penetration of a year's wave into sand or gravel: sqrt(3.15e7 k / (pi rho c)). Source: `iso-13370.periodic` (from memory).
const soil = { conductivity: 2, depth: 3.17, heat: 2e6 };

/**
 * What the ground under a floor is to that floor: the steady U of ISO 13370 and, in place of the ground, a temperature
 * that follows the outdoor wave weakened by the edge's share and a month late. Resistances of the floor itself, m²K/W.
 */
export function groundBelow(area: number, perimeter: number, floorResistance: number, wave: YearWave) {
  const floor = groundFloor(area, perimeter);
  const u = slabU(floor, floorResistance);
  const thickness = floor.wall + soil.conductivity * (0.17 + floorResistance + 0.04);
  const edge = 0.37 * perimeter * soil.conductivity * Math.log(soil.depth / thickness + 1);
  const share = Math.min(1, edge / (u * area));
  return {
    u,
    /** °C at a month of the year, 0 to 12. */
    temperature: (month: number): number =>
      wave.mean - share * wave.amplitude * Math.cos((2 * Math.PI * (month - wave.coldest - 1)) / 12),
  };
}

/** Half a metre of soil, and what resists beyond it; m²K/W to the given temperature in all. */
export function soilLayers(resistance: number) {
  const near = Math.min(0.5, 0.5 * resistance * soil.conductivity);
  const layer = { thickness: near, conductivity: soil.conductivity, density: 1000, heat: soil.heat / 1000 };
  return [layer, { resistance: resistance - near / soil.conductivity }];
}
