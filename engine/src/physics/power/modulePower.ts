/** Rated W at 1000 W/m² and 25 °C, and what a kelvin changes of it (negative). */
export type ModuleRating = { readonly rated: number; readonly perKelvin: number };

/**
 * W of direct current at W/m² and °C of the cells. `dim` corrects for dim light: the share lost at 200 W/m². Source:
 * `power.module`.
 */
export function modulePower(light: number, cell: number, { rated, perKelvin }: ModuleRating, dim = 0): number {
  const plain = (light / 1000) * rated * (1 + perKelvin * (cell - 25));
  const lost = light > 200 ? (1000 - light) / 800 : 1 - (1 - light / 200) ** 4;
  return plain - dim * rated * lost;
}

/** Share lost to several causes, each a share of what the others leave. */
export const joinedLoss = (losses: readonly number[]): number => 1 - losses.reduce((kept, x) => kept * (1 - x), 1);

/**
 * Share of a row's slope that the row before it keeps direct sun off: rows on the level, `pitch` and `slant` m, tilt
 * and the sun's height across the rows in degrees. Nothing while the sun stands behind them. Source: `power.rows` (geometry).
 */
export function rowShade(pitch: number, slant: number, tilt: number, height: number): number {
  const rad = Math.PI / 180;
  if (height <= 0 || height + tilt >= 180) return 0;
  return Math.max(0, Math.min(1, 1 - ((pitch / slant) * Math.sin(height * rad)) / Math.sin((height + tilt) * rad)));
}

/** Share of an even sky that a level horizon of so many degrees leaves to a flat plane. */
export const skyAbove = (horizon: number): number => Math.cos((horizon * Math.PI) / 180) ** 2;
