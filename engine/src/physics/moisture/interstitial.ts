import { magnusPressure } from './magnus.ts';
import { type CutWall, cutIntoPlanes, type Plane, type VapourLayer } from './planes.ts';
import { type TangentLine, tangentLine } from './tangent.ts';

/** Vapour through still air, kg/(m s Pa). Source: `iso-13788.interstitial`. */
export const airPermeability = 2e-10;
const secondsPerDay = 86_400;

/** One month: °C and Pa on both sides. */
export type MonthAir = {
  readonly indoor: number;
  readonly outdoor: number;
  readonly indoorVapour: number;
  readonly outdoorVapour: number;
  readonly days: number;
};

/** A plane that holds water at some time of the year. Both lists in the order of the months given. */
export type WetPlane = Plane & {
  /** kg/m² that gather in each month; negative where more dries. */
  readonly gained: readonly number[];
  /** kg/m² at the end of each month. */
  readonly held: readonly number[];
};

export type Interstitial = {
  /** Index of the month the year is begun in: the first with condensation; undefined where none has any. */
  readonly start: number | undefined;
  readonly planes: readonly WetPlane[];
  /** The most that lies on any one plane at any time, kg/m². */
  readonly most: number;
  /** What is still there twelve months after the start, all planes together, kg/m²: 0 where it dries within the year. */
  readonly left: number;
  /** kg/m² through the inside and the outside surface over the year, outward positive. */
  readonly entered: number;
  readonly leaving: number;
  /** For each month: whether vapour is kept back by a surface that is itself wet (its air is damper than it can be). */
  readonly surfaceWet: readonly boolean[];
};

/**
 * Condensation inside a construction month by month, with several planes, gathering and drying (ISO 13788, 6.4). The
 * year is begun in the first month with condensation after the longest spell without. A plane that dries up within a
 * month is let go at that moment, so that no water is made or lost. Layers inside first; films m²K/W. Throws as
 * `cutIntoPlanes` does. The method leaves out moisture carried by leaking air, water drawn up and stored in materials,
 * rain and sun. Source: `iso-13788.interstitial`.
 */
export function interstitial(
  layers: readonly VapourLayer[],
  films: { readonly inside: number; readonly outside: number },
  months: readonly MonthAir[],
): Interstitial {
  const wall = cutIntoPlanes(layers, films);
  const sd = wall.planes.map((p) => p.sd);
  const bounds = months.map((m) => boundsOf(wall, m));
  const start = startMonth(bounds.map(({ bound }) => tangentLine(sd, bound, () => false).at.length > 2));
  const surfaceWet = bounds.map((b) => b.surfaceWet);
  if (start === undefined) return { start, planes: [], most: 0, left: 0, ...dryYear(sd, bounds, months), surfaceWet };
  const store = new Float64Array(sd.length);
  const gained = months.map(() => sd.map(() => 0));
  const held = months.map(() => sd.map(() => 0));
  const sums = { entered: 0, leaving: 0, most: 0 };
  for (let k = 0; k < months.length; k++) {
    const m = (start + k) % months.length;
    const before = Array.from(store);
    passMonth(sd, bounds[m]?.bound ?? [], (months[m]?.days ?? 0) * secondsPerDay, store, sums);
    held[m] = Array.from(store);
    gained[m] = before.map((b, i) => (store[i] ?? 0) - b);
  }
  const planes = wall.planes.flatMap((plane, i): WetPlane[] => {
    const mine = { gained: gained.map((g) => g[i] ?? 0), held: held.map((h) => h[i] ?? 0) };
    return mine.gained.some((g) => g !== 0) ? [{ ...plane, ...mine }] : [];
  });
  const left = store.reduce((a, b) => a + b, 0);
  return { start, planes, most: sums.most, left, entered: sums.entered, leaving: sums.leaving, surfaceWet };
}

type Bounds = { readonly bound: readonly number[]; readonly surfaceWet: boolean };

/** Saturation at each plane; at both surfaces the vapour pressure of their air, or saturation where that is less. */
function boundsOf(wall: CutWall, m: MonthAir): Bounds {
  const at = (r: number): number => magnusPressure(m.indoor + ((m.outdoor - m.indoor) * r) / wall.total);
  const bound = wall.planes.map((p) => Math.min(at(p.from), at(p.to)));
  const last = bound.length - 1;
  const [inner = 0, outer = 0] = [bound[0], bound[last]];
  bound[0] = Math.min(inner, m.indoorVapour);
  bound[last] = Math.min(outer, m.outdoorVapour);
  return { bound, surfaceWet: m.indoorVapour > inner || m.outdoorVapour > outer };
}

/** The first wet month after the longest dry spell round the year; the earliest of equal ones. */
function startMonth(wet: readonly boolean[]): number | undefined {
  const n = wet.length;
  const dryBefore = (m: number): number => {
    let count = 0;
    while (count < n && !wet[(m - 1 - count + 2 * n) % n]) count++;
    return count;
  };
  return wet.reduce<number | undefined>(
    (best, is, m) => (is && (best === undefined || dryBefore(m) > dryBefore(best)) ? m : best),
    undefined,
  );
}

/** Flow along the line just after its first point, or just before its last, kg/(m²s). */
function flowBetween(sd: readonly number[], line: TangentLine, i: number): number {
  const [a = 0, b = 0] = [sd[line.at[i] ?? 0], sd[line.at[i + 1] ?? 0]];
  return (airPermeability * ((line.pressure[i] ?? 0) - (line.pressure[i + 1] ?? 0))) / (b - a);
}

/**
 * One month in place: `store` kg/m² by plane. Letting go of a dry plane only lowers the line elsewhere, so each plane
 * dries up at most once a month and the loop ends after as many turns as there are planes.
 */
function passMonth(
  sd: readonly number[],
  bound: readonly number[],
  seconds: number,
  store: Float64Array,
  sums: { entered: number; leaving: number; most: number },
): void {
  let remaining = seconds;
  for (let turn = 0; turn <= sd.length && remaining > 0; turn++) {
    const line = tangentLine(sd, bound, (i) => (store[i] ?? 0) > 0);
    const flows = line.at.slice(1).map((_, i) => flowBetween(sd, line, i));
    let dt = remaining;
    let dried = -1;
    for (let v = 1; v < line.at.length - 1; v++) {
      const plane = line.at[v] ?? 0;
      const rate = (flows[v - 1] ?? 0) - (flows[v] ?? 0);
      if (rate >= 0 || (store[plane] ?? 0) >= -rate * dt) continue;
      dt = (store[plane] ?? 0) / -rate;
      dried = plane;
    }
    for (let v = 1; v < line.at.length - 1; v++) {
      const plane = line.at[v] ?? 0;
      store[plane] = (store[plane] ?? 0) + ((flows[v - 1] ?? 0) - (flows[v] ?? 0)) * dt;
      sums.most = Math.max(sums.most, store[plane] ?? 0);
    }
    if (dried >= 0) store[dried] = 0;
    sums.entered += (flows[0] ?? 0) * dt;
    sums.leaving += (flows.at(-1) ?? 0) * dt;
    remaining -= dt;
  }
}

/** Vapour through a year in which nothing condenses: as much leaves as enters. */
function dryYear(
  sd: readonly number[],
  bounds: readonly Bounds[],
  months: readonly MonthAir[],
): { entered: number; leaving: number } {
  const through = months.reduce((sum, m, i) => {
    const bound = bounds[i]?.bound ?? [];
    const flow = flowBetween(sd, { at: [0, sd.length - 1], pressure: [bound[0] ?? 0, bound.at(-1) ?? 0] }, 0);
    return sum + flow * m.days * secondsPerDay;
  }, 0);
  return { entered: through, leaving: through };
}
