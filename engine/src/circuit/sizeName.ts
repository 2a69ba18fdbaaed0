import { gaugeExactly, gaugeName } from './wires/gauges.ts';

/** What stands on a conductor of so many mm²: `10 AWG`, `2/0 AWG`, `6 mm²`. */
export function sizeName(area: number): string {
  const n = gaugeExactly(area);
  return n === undefined ? `${Math.round(area * 100) / 100} mm²` : `${gaugeName(n)} AWG`;
}
