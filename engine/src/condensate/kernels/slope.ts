/** m of fall for each m of drain, at the least: an eighth of an inch in a foot. Source: `condensate.slope`. */
export const slopeLeast = 1 / 96;

/** Roughness of smooth plastic in Manning's formula. Source: `condensate.manning`. */
const roughness = 0.009;

/**
 * What a pipe of `diameter` m carries half full at `slope`, and how fast: m³/s and m/s. Half full its hydraulic radius is
 * a quarter of the diameter. Source: `condensate.manning`.
 */
export function carriesHalfFull(diameter: number, slope: number): { readonly flow: number; readonly speed: number } {
  const area = (Math.PI / 8) * diameter * diameter;
  const speed = ((diameter / 4) ** (2 / 3) * Math.sqrt(Math.max(0, slope))) / roughness;
  return { flow: area * speed, speed };
}
