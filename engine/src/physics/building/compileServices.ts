import type { AirArrays, ControlArrays } from './layout.ts';
import { BuildingRefused } from './refused.ts';
import type { Building, Leakage, Moisture, System } from './spec.ts';
import type { ZoneOf } from './zoneOf.ts';

/** Far beyond any temperature: a set point that is off. */
const never = 1e9;

export function airArrays(building: Building, density: number, zoneOf: ZoneOf): AirArrays {
  const n = building.zones.length;
  const constant = new Float64Array(n);
  const fan = new Float64Array(n * 24);
  for (const f of building.fans) {
    const z = zoneOf(f.zone, 'fans');
    for (let h = 0; h < 24; h++) fan[z * 24 + h] = (fan[z * 24 + h] ?? 0) + density * (f.flow[h] ?? 0);
  }
  const leaks = building.leakage.filter((l): l is Extract<Leakage, { kind: 'stack-and-wind' }> => {
    if (l.kind === 'stack-and-wind') return true;
    const z = zoneOf(l.zone, 'leakage');
    constant[z] = (constant[z] ?? 0) + density * l.flow;
    return false;
  });
  return {
    constant,
    fan,
    leaks: leaks.length,
    leakShare: Float64Array.from(leaks.flatMap((l) => building.zones.map((z) => l.shares[z.id] ?? 0))),
    leakStack: Float64Array.from(leaks, (l) => l.stack),
    leakWind: Float64Array.from(leaks, (l) => l.wind),
    leakExponent: Float64Array.from(leaks, (l) => l.exponent),
    leakUpZone: Int32Array.from(leaks, (l) => (l.up ? zoneOf(l.up.zone, 'leakage') : -1)),
    leakUpShare: Float64Array.from(leaks, (l) => l.up?.share ?? 0),
    passages: building.passages.length,
    passageFrom: Int32Array.from(building.passages, (p) => zoneOf(p.between[0], 'passages')),
    passageTo: Int32Array.from(building.passages, (p) => zoneOf(p.between[1], 'passages')),
    passageBuoyant: Float64Array.from(building.passages, (p) => p.buoyant),
    passageSteady: Float64Array.from(building.passages, (p) => p.steady),
    pressure: building.pressure,
  };
}

export function controlArrays(
  building: Building,
  rows: number,
  stepsPerDay: number,
  moisture: Readonly<Record<string, Moisture>>,
  zoneOf: ZoneOf,
): ControlArrays {
  const { systems } = building;
  const varies = systems.some((s) => typeof s.heatMost === 'object' || typeof s.coolMost === 'object');
  const mostRows = varies ? rows : 1;
  return {
    sensor: Int32Array.from(systems, (s) => 2 * zoneOf(s.sensor, s.id)),
    share: Float64Array.from(systems.flatMap((s) => building.zones.map((z) => s.shares[z.id] ?? 0))),
    heatTo: Float64Array.from(systems.flatMap((s) => setPoints(s.heatTo, stepsPerDay, -never))),
    coolTo: Float64Array.from(systems.flatMap((s) => setPoints(s.coolTo, stepsPerDay, never))),
    mostRows,
    heatMost: joined(systems.map((s) => mostByRow(s.heatMost, mostRows, s.id))),
    coolMost: joined(systems.map((s) => mostByRow(s.coolMost, mostRows, s.id))),
    driest: Float64Array.from(building.zones, (z) => moisture[z.id]?.driest ?? never),
  };
}

/** Columns of one length, one after another. */
function joined(columns: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(columns.reduce((sum, x) => sum + x.length, 0));
  columns.forEach((x, i) => {
    all.set(x, i * x.length);
  });
  return all;
}

function mostByRow(most: System['heatMost'], rows: number, at: string): Float64Array {
  if (typeof most !== 'object') return new Float64Array(rows).fill(most ?? Number.MAX_VALUE);
  if (most.length !== rows) throw new BuildingRefused(at, `has ${most.length} rows of what it can give, not ${rows}`);
  return Float64Array.from(most);
}

/** Set point in the middle of each step, on a line through its hour; `off` where there is none. */
function setPoints(hours: System['heatTo'], stepsPerDay: number, off: number): number[] {
  const perHour = stepsPerDay / 24;
  return Array.from({ length: stepsPerDay }, (_, i) => {
    const hour = hours[Math.floor(i / perHour)];
    if (!hour) return off;
    const share = ((i % perHour) + 0.5) / perHour;
    return hour[0] + (hour[1] - hour[0]) * share;
  });
}
