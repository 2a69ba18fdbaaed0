import type { DuctArrays } from './layout.ts';
import { BuildingRefused } from './refused.ts';
import type { Building, DuctLevel, Ductwork } from './spec.ts';
import type { ZoneOf } from './zoneOf.ts';

/** Lays out duct systems. Throws BuildingRefused for one without levels, levels that do not rise, or heat that goes astray. */
export function ductArrays(building: Building, zoneOf: ZoneOf): DuctArrays {
  const ductworks = building.ductworks ?? [];
  const systems = building.systems.map((s) => s.id);
  const n = building.zones.length;
  for (const d of ductworks) checkLevels(d);
  const levels = ductworks.flatMap((d) => d.levels);
  const byZone = (of: Readonly<Record<string, number>>): number[] => {
    const row = new Array<number>(n).fill(0);
    for (const [zone, x] of Object.entries(of)) row[zoneOf(zone, 'ductworks')] = x;
    return row;
  };
  const byPair = (pairs: readonly { readonly into: string; readonly from: string; readonly x: number }[]): number[] => {
    const square = new Array<number>(n * n).fill(0);
    for (const { into, from, x } of pairs) {
      const at = zoneOf(into, 'ductworks') * n + zoneOf(from, 'ductworks');
      square[at] = (square[at] ?? 0) + x;
    }
    return square;
  };
  let first = 0;
  return {
    count: ductworks.length,
    ofSystem: Int32Array.from(systems, (id) => ductworks.findIndex((d) => d.systems.includes(id))),
    firstLevel: Int32Array.from([0, ...ductworks.map((d) => (first += d.levels.length))]),
    output: Float64Array.from(levels, (l) => l.output),
    share: Float64Array.from(levels.flatMap((l) => systems.flatMap((id) => byZone(l.carried[id] ?? {})))),
    air: Float64Array.from(levels.flatMap((l) => byPair(l.air.map((a) => ({ ...a, x: a.flow }))))),
    walls: Float64Array.from(levels.flatMap((l) => byPair(l.walls.map((w) => ({ ...w, x: w.conductance }))))),
    outdoor: Float64Array.from(levels.flatMap((l) => byZone(l.drawn))),
    dries: Float64Array.from(levels.flatMap((l) => byZone(l.dries))),
    coilRatio: Float64Array.from(ductworks, (d) => d.coilRatio),
  };
}

function checkLevels({ systems, levels }: Ductwork): void {
  const at = `ductworks.${systems.join(' ')}`;
  if (levels.length === 0) throw new BuildingRefused(at, 'a duct system needs a level');
  levels.forEach((level, i) => {
    if (level.output <= (levels[i - 1]?.output ?? 0)) throw new BuildingRefused(at, 'the levels of a duct system rise');
    for (const id of systems) checkWhole(at, id, level);
  });
}

/** All of a system's heat has to arrive somewhere. */
function checkWhole(at: string, id: string, level: DuctLevel): void {
  const sum = Object.values(level.carried[id] ?? {}).reduce((a, b) => a + b, 0);
  if (Math.abs(sum - 1) > 1e-9) throw new BuildingRefused(at, `of the heat of "${id}" ${sum} arrives, not all`);
}
