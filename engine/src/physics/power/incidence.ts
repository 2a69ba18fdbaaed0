import { rad } from '../exact.ts';

/** Share of the direct light that enters the glass, against upright light: 1 - b (1/cos - 1). Degrees below 90. Source: `power.incidence`. */
export const incidenceReciprocal = (angle: number, b: number): number =>
  Math.max(0, 1 - b * (1 / Math.cos(angle * rad) - 1));

/** Glass: refractive index, 1/m taken up, m thick; and the index of a coating on it. */
export type CoverGlass = {
  readonly index: number;
  readonly extinction: number;
  readonly thickness: number;
  readonly coating?: number;
};

/** The same by reflection and absorption in one pane, coated or not. Degrees below 90. Source: `power.incidence`. */
export function incidencePhysical(angle: number, glass: CoverGlass): number {
  const through = passed(Math.cos(angle * rad), glass);
  return through / passed(1, glass);
}

/** Share of light that passes the pane, by the cosine of its angle; the mean of both polarisations. */
function passed(cosine: number, { index, extinction, thickness, coating }: CoverGlass): number {
  const sine = Math.sqrt(1 - cosine * cosine);
  const inside = (n: number): number => Math.sqrt(1 - (sine / n) ** 2);
  const bare = (side: 's' | 'p'): number => 1 - reflected(side, 1, cosine, index, inside(index));
  const coated = (side: 's' | 'p', n: number): number => {
    const first = reflected(side, 1, cosine, n, inside(n));
    const second = reflected(side, n, inside(n), index, inside(index));
    return ((1 - first) * (1 - second)) / (1 - first * second);
  };
  const both = coating === undefined ? bare('s') + bare('p') : coated('s', coating) + coated('p', coating);
  return (both / 2) * Math.exp((-extinction * thickness) / inside(index));
}

/** Fresnel's share thrown back where index and cosine change. */
function reflected(side: 's' | 'p', n1: number, cosine1: number, n2: number, cosine2: number): number {
  const [a, b] = side === 's' ? [n1 * cosine1, n2 * cosine2] : [n1 * cosine2, n2 * cosine1];
  return ((a - b) / (a + b)) ** 2;
}

/** The same by one constant of the module (Martin & Ruiz 2001), from the cosine of the angle. Source: `power.incidence`. */
export const incidenceExponential = (cosine: number, constant: number): number =>
  cosine <= 0 ? 0 : (1 - Math.exp(-cosine / constant)) / (1 - Math.exp(-1 / constant));

/** The same by the fifth power. Degrees to 90. Source: `power.incidence`. */
export const incidenceFifth = (angle: number): number => 1 - (1 - Math.cos(angle * rad)) ** 5;

/** 4/(3π), rounded as the paper prints it. */
const published = 0.4244;

/** Share of sky light and of light off the ground that enters a module tilted by so many degrees, 0 to 180. Source: `power.incidence`. */
export function incidenceDiffuse(tilt: number, constant: number): { readonly sky: number; readonly ground: number } {
  const [b, sine, cosine] = [tilt * rad, Math.sin(tilt * rad), Math.cos(tilt * rad)];
  const entered = (reach: number): number =>
    1 - Math.exp(-((published + (0.5 * constant - 0.154) * reach) * reach) / constant);
  return {
    sky: tilt === 180 ? 0 : entered(sine + (Math.PI - b - sine) / (1 + cosine)),
    ground: tilt === 0 ? 0 : entered(sine + (b - sine) / (1 - cosine)),
  };
}
