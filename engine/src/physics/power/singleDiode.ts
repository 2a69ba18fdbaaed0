/** A module at 1000 W/m² and 25 °C: A/K, V, A, A, ohm, ohm, eV, and eV's share a kelvin. */
export type DiodeModule = {
  readonly currentPerKelvin: number;
  readonly slope: number;
  readonly light: number;
  readonly dark: number;
  readonly shunt: number;
  readonly series: number;
  readonly gap: number;
  readonly gapPerKelvin: number;
};

/** The same at some light and temperature. */
export type DiodeState = Pick<DiodeModule, 'slope' | 'light' | 'dark' | 'shunt' | 'series'>;

const boltzmann = 8.617333262e-5;
const reference = 298.15;

/** A module's five numbers at W/m² above 0 and °C (De Soto 2006). Source: `power.single-diode`. */
export function diodeAt(module: DiodeModule, light: number, cell: number): DiodeState {
  const t = cell + 273.15;
  const gap = module.gap * (1 + module.gapPerKelvin * (t - reference));
  return {
    light: (light / 1000) * (module.light + module.currentPerKelvin * (cell - 25)),
    dark: module.dark * (t / reference) ** 3 * Math.exp(module.gap / (boltzmann * reference) - gap / (boltzmann * t)),
    shunt: (module.shunt * 1000) / light,
    series: module.series,
    slope: (module.slope * t) / reference,
  };
}

/** A and V at a short, open, and where their product is largest. */
export type DiodePoints = {
  readonly short: number;
  readonly open: number;
  readonly current: number;
  readonly voltage: number;
  readonly power: number;
};

/**
 * The named points of a module's curve. The voltage across the diode itself makes current and voltage explicit; each
 * point is the root of a falling function of it, halved to rounding. Source: `power.single-diode`.
 */
export function diodePoints(d: DiodeState): DiodePoints {
  const current = (v: number): number => d.light - d.dark * Math.expm1(v / d.slope) - v / d.shunt;
  const steep = (v: number): number => -(d.dark / d.slope) * Math.exp(v / d.slope) - 1 / d.shunt;
  const outer = (v: number): number => v - current(v) * d.series;
  const most = d.slope * Math.log1p(d.light / d.dark);
  const short = rootOf((v) => -outer(v), 0, most);
  const open = rootOf(current, 0, most);
  const best = rootOf((v) => steep(v) * outer(v) + current(v) * (1 - steep(v) * d.series), short, open);
  return {
    short: current(short),
    open,
    current: current(best),
    voltage: outer(best),
    power: current(best) * outer(best),
  };
}

/** Where a falling function passes zero. */
function rootOf(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
