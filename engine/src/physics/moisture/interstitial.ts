import { saturationMagnus } from './magnus.ts';

/** A layer for vapour: m²K/W, and the thickness of air that would hold vapour up as much, m. Inside first. */
export type VapourLayer = { readonly resistance: number; readonly sd: number };

/** A month: °C and Pa of vapour indoors and outdoors, and its days. */
export type VapourMonth = {
  readonly days: number;
  readonly inside: { readonly t: number; readonly p: number };
  readonly outside: { readonly t: number; readonly p: number };
};

/** g/m² gathered at the end of each month, month by month from the first that wets it, and where. */
export type Interstitial = {
  /** Month, 0 to 11, with which the count begins; undefined where nothing ever condenses. */
  readonly begins?: number;
  /** All planes together. */
  readonly gathered: readonly number[];
  readonly most: number;
  /** What is left after twelve months. */
  readonly left: number;
  /** m of equivalent air from the inside to the plane that gathers most; undefined where none does. */
  readonly plane?: number;
};

/** kg/(m s Pa) of still air. */
const permeability = 2e-10;
/** A layer with more resistance than this is cut into equal parts, m²K/W. */
const partMost = 0.25;

type Plane = { readonly sd: number; readonly resistance: number };

/**
 * Water that gathers inside a wall through a year, by the steady monthly method of ISO 13788: heat and vapour go straight
 * through, moisture carried by leaking air and all storage but that of the water itself are left out. Films in m²K/W.
 * Vapour lies on the lower hull of saturation against resistance to vapour; where water has gathered it stands at
 * saturation until it is gone. Source: `iso-13788.interstitial` (from memory).
 */
export function interstitial(
  layers: readonly VapourLayer[],
  films: { readonly inside: number; readonly outside: number },
  months: readonly VapourMonth[],
): Interstitial {
  const planes = planesOf(layers, films.inside);
  const whole = planes.at(-1)?.resistance ?? 0;
  const total = whole + films.outside;
  const wetFirst = months.map((m) => ratesOf(planes, total, m, new Set()).some((r) => r > 1e-12));
  const begins = wetFirst.findIndex((wet, i) => wet && !wetFirst[(i + months.length - 1) % months.length]);
  const start = begins >= 0 ? begins : wetFirst.indexOf(true);
  if (start < 0) return { gathered: months.map(() => 0), most: 0, left: 0 };
  const water = planes.map(() => 0);
  const peaks = planes.map(() => 0);
  const gathered = months.map((_, i) => {
    const month = months[(start + i) % months.length];
    if (month) passMonth(planes, total, month, water);
    water.forEach((w, k) => {
      peaks[k] = Math.max(peaks[k] ?? 0, w);
    });
    return 1000 * water.reduce((a, w) => a + w, 0);
  });
  const worst = peaks.indexOf(Math.max(...peaks));
  return {
    begins: start,
    gathered,
    most: Math.max(...gathered),
    left: gathered.at(-1) ?? 0,
    plane: planes[worst]?.sd ?? 0,
  };
}

/** Faces between layers and parts of thick ones, from the inner face to the outer. */
function planesOf(layers: readonly VapourLayer[], insideFilm: number): Plane[] {
  const planes: Plane[] = [{ sd: 0, resistance: insideFilm }];
  for (const layer of layers) {
    const parts = Math.max(1, Math.ceil(layer.resistance / partMost));
    for (let i = 0; i < parts; i++) {
      const last = planes.at(-1) ?? { sd: 0, resistance: 0 };
      planes.push({ sd: last.sd + layer.sd / parts, resistance: last.resistance + layer.resistance / parts });
    }
  }
  return planes;
}

/** Lets a month pass; where a plane dries out within it the rest of the month goes on without it. */
function passMonth(planes: readonly Plane[], total: number, month: VapourMonth, water: number[]): void {
  let left = month.days * 86_400;
  for (let turn = 0; turn <= 2 * planes.length && left > 0; turn++) {
    const wet = new Set(water.flatMap((w, k) => (w > 0 ? [k] : [])));
    const rates = ratesOf(planes, total, month, wet);
    const until = rates.map((r, k) => (r < 0 && wet.has(k) ? (water[k] ?? 0) / -r : Number.POSITIVE_INFINITY));
    const time = Math.min(left, ...until);
    rates.forEach((r, k) => {
      const now = (water[k] ?? 0) + r * time;
      water[k] = (until[k] ?? 0) <= time ? 0 : Math.max(0, now);
    });
    left -= time;
  }
}

/** kg/(m² s) of water that each plane gathers; negative where it dries. Planes in `wet` stand at saturation. */
function ratesOf(planes: readonly Plane[], total: number, month: VapourMonth, wet: ReadonlySet<number>): number[] {
  const { inside, outside } = month;
  const last = planes.length - 1;
  const saturation = planes.map((p) => saturationMagnus(inside.t + ((outside.t - inside.t) * p.resistance) / total));
  const pressure = saturation.map((p, k) =>
    k === 0 ? Math.min(inside.p, p) : k === last ? Math.min(outside.p, p) : p,
  );
  const held = [0, ...[...wet].filter((k) => k > 0 && k < last).sort((a, b) => a - b), last];
  const touching = held.slice(1).flatMap((end, i) => hull(planes, pressure, held[i] ?? 0, end).slice(1));
  const line = [0, ...touching];
  const rates = planes.map(() => 0);
  const flux = (from: number, to: number): number => {
    const distance = (planes[to]?.sd ?? 0) - (planes[from]?.sd ?? 0);
    return distance > 0 ? (permeability * ((pressure[from] ?? 0) - (pressure[to] ?? 0))) / distance : 0;
  };
  for (let i = 1; i + 1 < line.length; i++) {
    const [before, here, after] = [line[i - 1] ?? 0, line[i] ?? 0, line[i + 1] ?? 0];
    rates[here] = flux(before, here) - flux(here, after);
  }
  return rates;
}

/** Planes at which the lower hull of the pressures touches, from one plane to another, both counted. */
function hull(planes: readonly Plane[], pressure: readonly number[], from: number, to: number): number[] {
  const kept: number[] = [];
  const at = (k: number): readonly [number, number] => [planes[k]?.sd ?? 0, pressure[k] ?? 0];
  for (let k = from; k <= to; k++) {
    while (kept.length >= 2) {
      const [x0, y0] = at(kept.at(-2) ?? 0);
      const [x1, y1] = at(kept.at(-1) ?? 0);
      const [x2, y2] = at(k);
      // A plane on or above the line from its neighbour before to the one after does not touch.
      if ((y1 - y0) * (x2 - x0) < (y2 - y0) * (x1 - x0)) break;
      kept.pop();
    }
    kept.push(k);
  }
  return kept;
}
