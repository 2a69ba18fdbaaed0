/**
 * The heat that each hour must have taken, in a house of two heat capacities: the air with what warms with it, whose temperature
 * is logged, and the mass behind it, which takes up the sun and also loses outdoors. The balance of each hour is exact for what is
 * stored in the air, and for the mass where what drives it stands still through the hour. `indoor` are means of hours, `ends` the
 * temperature at the end of each.
 * p: W/K from the air outdoors, W/K from the mass outdoors, W/K between, J/K of air, J/K of mass, m² of sun, W of other gains, W a day
 * that these grow, m² a day, W/K for each m/s of wind. `day` counts days from the log's middle; `wind` is less its mean. A row whose
 * `fresh` is 1 begins anew, with the mass at rest. Writes W, 0 where a row begins anew.
 */
export function heatOfHours(
  p: Float64Array,
  outdoor: Float64Array,
  indoor: Float64Array,
  ends: Float64Array,
  sun: Float64Array,
  wind: Float64Array,
  day: Float64Array,
  fresh: Uint8Array,
  seconds: number,
  heat: Float64Array,
): void {
  const direct = p[0]!;
  const outer = p[1]!;
  const between = p[2]!;
  const both = outer + between;
  const times = (both * seconds) / p[4]!;
  const kept = Math.exp(-times);
  const usual = (1 - kept) / times;
  let mass = 0;
  for (let i = 0; i < indoor.length; i++) {
    const light = (p[5]! + p[8]! * day[i]!) * sun[i]!;
    const rest = (outer * outdoor[i]! + between * indoor[i]! + light) / both;
    if (fresh[i]! === 1) {
      mass = rest;
      heat[i] = 0;
      continue;
    }
    const mean = rest + usual * (mass - rest);
    mass = rest + kept * (mass - rest);
    const rise = (p[3]! * (ends[i]! - ends[i - 1]!)) / seconds;
    const apart = indoor[i]! - outdoor[i]!;
    heat[i] = rise + (direct + p[9]! * wind[i]!) * apart + between * (indoor[i]! - mean) - p[6]! - p[7]! * day[i]!;
  }
}
