import { rad } from '../exact.ts';

/** W/m² at one astronomical unit. Source: `sun.constant`. */
export const solarConstant = 1361;

/** Relative air mass by Kasten & Young 1989 from the apparent zenith, degrees. Source: `sun.air-mass`. */
export const airMass = (zenith: number): number =>
  zenith >= 96 ? 0 : 1 / (Math.cos(zenith * rad) + 0.50572 * (6.07995 + 90 - zenith) ** -1.6364);

export type Irradiance = { readonly global: number; readonly beamNormal: number; readonly diffuse: number };

/**
 * Clear sky by Ineichen & Perez 2002, W/m². Apparent zenith degrees, pressure-corrected air mass, Linke turbidity,
 * height above the sea m, extraterrestrial normal W/m². Source: `sun.clear-sky`.
 */
export function clearSky(
  zenith: number,
  mass: number,
  turbidity: number,
  elevation: number,
  extraterrestrial: number,
): Irradiance {
  const cosZ = Math.max(0, Math.cos(zenith * rad));
  if (cosZ === 0) return { global: 0, beamNormal: 0, diffuse: 0 };
  const fh1 = Math.exp(-elevation / 8000);
  const fh2 = Math.exp(-elevation / 1250);
  const cg1 = 5.09e-5 * elevation + 0.868;
  const cg2 = 3.92e-5 * elevation + 0.0387;
  const global = cg1 * extraterrestrial * cosZ * Math.max(0, Math.exp(-cg2 * mass * (fh1 + fh2 * (turbidity - 1))));
  const free = extraterrestrial * (0.664 + 0.163 / fh1) * Math.exp(-0.09 * mass * (turbidity - 1));
  const cap = (global * (1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / fh1))) / cosZ;
  const beamNormal = Math.max(0, Math.min(free, cap));
  return { global, beamNormal, diffuse: global - beamNormal * cosZ };
}

/** Share of the sun on the level that comes from the whole sky, by hourly clearness (Erbs 1982). Source: `sun.split`. */
export function diffuseShare(clearness: number): number {
  if (clearness <= 0.22) return 1 - 0.09 * clearness;
  if (clearness > 0.8) return 0.165;
  return 0.9511 + clearness * (-0.1604 + clearness * (4.388 + clearness * (-16.638 + clearness * 12.336)));
}

/** Cosine of the angle between sun and a plane's normal; degrees, azimuth clockwise from north, tilt 0 faces up. */
export const incidenceCosine = (
  plane: { tilt: number; azimuth: number },
  sun: { zenith: number; azimuth: number },
): number =>
  Math.cos(sun.zenith * rad) * Math.cos(plane.tilt * rad) +
  Math.sin(sun.zenith * rad) * Math.sin(plane.tilt * rad) * Math.cos((sun.azimuth - plane.azimuth) * rad);

// Perez 1990, all-sites composite (Solar Energy 44(5)); looked up, see validation/solar.
const bins = [1.065, 1.23, 1.5, 1.95, 2.8, 4.5, 6.2, Number.POSITIVE_INFINITY];
const brightness = [
  [-0.008, 0.588, -0.062, -0.06, 0.072, -0.022],
  [0.13, 0.683, -0.151, -0.019, 0.066, -0.029],
  [0.33, 0.487, -0.221, 0.055, -0.064, -0.026],
  [0.568, 0.187, -0.295, 0.109, -0.152, -0.014],
  [0.873, -0.392, -0.362, 0.226, -0.462, 0.001],
  [1.132, -1.237, -0.412, 0.288, -0.823, 0.056],
  [1.06, -1.6, -0.359, 0.264, -1.127, 0.131],
  [0.678, -0.327, -0.25, 0.156, -1.377, 0.251],
];

/**
 * How bright the sky is round the sun and along the horizon, as shares of its light, by Perez 1990. Apparent zenith
 * degrees, relative air mass, extraterrestrial normal W/m². A dark sky has neither. Source: `sun.perez`.
 */
export function skyBrightness(
  zenith: number,
  light: { beamNormal: number; diffuse: number },
  mass: number,
  extraterrestrial: number,
): { readonly roundSun: number; readonly horizon: number } {
  if (light.diffuse <= 0) return { roundSun: 0, horizon: 0 };
  const z = zenith * rad;
  const kappa = 1.041 * z ** 3;
  const clearness = ((light.diffuse + light.beamNormal) / light.diffuse + kappa) / (1 + kappa);
  const delta = (light.diffuse * mass) / extraterrestrial;
  const row = brightness[bins.findIndex((b) => clearness < b)] ?? [0, 0, 0, 0, 0, 0];
  const [f11 = 0, f12 = 0, f13 = 0, f21 = 0, f22 = 0, f23 = 0] = row;
  return { roundSun: Math.max(0, f11 + f12 * delta + f13 * z), horizon: f21 + f22 * delta + f23 * z };
}

/** Cosine of the zenith against which light round the sun is measured: never below that of 85 degrees. */
export const sunLevel = (cosineOfZenith: number): number => Math.max(Math.cos(85 * rad), cosineOfZenith);

/**
 * Sky light on a tilted plane by Perez 1990, W/m². Sun by its apparent place, relative air mass, extraterrestrial
 * normal W/m². Source: `sun.perez`.
 */
export function skyOnPlane(
  plane: { tilt: number; azimuth: number },
  sun: { zenith: number; azimuth: number },
  light: { beamNormal: number; diffuse: number },
  mass: number,
  extraterrestrial: number,
): number {
  if (light.diffuse <= 0) return 0;
  const { roundSun: f1, horizon: f2 } = skyBrightness(sun.zenith, light, mass, extraterrestrial);
  const a = Math.max(0, incidenceCosine(plane, sun));
  const b = sunLevel(Math.cos(sun.zenith * rad));
  const tilt = plane.tilt * rad;
  return Math.max(0, light.diffuse * ((1 - f1) * ((1 + Math.cos(tilt)) / 2) + f1 * (a / b) + f2 * Math.sin(tilt)));
}

/** Light thrown up by the ground onto a plane, W/m². */
export const groundOnPlane = (tilt: number, global: number, reflectance: number): number =>
  (global * reflectance * (1 - Math.cos(tilt * rad))) / 2;
