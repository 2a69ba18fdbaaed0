import type { Layout, State } from './layout.ts';

/**
 * Finds where each duct system stands between its levels for the heat its systems give just now: the level below, the
 * way to the next, and the part of the time its fan runs.
 */
export function placeDucts(l: Layout, s: State): void {
  const { ducts: d, systems } = l;
  const { ductLevel, ductToNext, ductRunning } = s.work;
  for (let i = 0; i < d.count; i++) {
    let given = 0;
    for (let j = 0; j < systems; j++) if (d.ofSystem[j] === i) given += Math.abs(s.heat[j]!);
    const first = d.firstLevel[i]!;
    const last = d.firstLevel[i + 1]! - 1;
    let level = first;
    while (level < last && d.output[level + 1]! <= given) level++;
    ductLevel[i] = level;
    ductRunning[i] = Math.min(1, given / d.output[first]!);
    ductToNext[i] =
      level === last || given < d.output[first]!
        ? 0
        : (given - d.output[level]!) / (d.output[level + 1]! - d.output[level]!);
  }
}

/**
 * What the duct systems do in a row, from the heat they gave just before: where each system's heat goes, the air they
 * move between zones, what they draw from outdoors, and what their walls carry. Adds to the row's air flows.
 */
export function setDucts(l: Layout, s: State): void {
  const { ducts: d, zones, systems } = l;
  const { ductLevel, ductToNext, ductRunning, share, exchange, walls, outdoorFlow } = s.work;
  placeDucts(l, s);
  walls.fill(0);
  for (let i = 0; i < d.count; i++) {
    const at = ductLevel[i]!;
    const up = ductToNext[i]!;
    const next = up > 0 ? at + 1 : at;
    const running = ductRunning[i]!;
    for (let j = 0; j < systems; j++) {
      if (d.ofSystem[j] !== i) continue;
      const [a, b] = [(at * systems + j) * zones, (next * systems + j) * zones];
      for (let z = 0; z < zones; z++) share[j * zones + z] = (1 - up) * d.share[a + z]! + up * d.share[b + z]!;
    }
    const pairs = zones * zones;
    for (let p = 0; p < pairs; p++) {
      exchange[p] = exchange[p]! + running * ((1 - up) * d.air[at * pairs + p]! + up * d.air[next * pairs + p]!);
      walls[p] = walls[p]! + running * ((1 - up) * d.walls[at * pairs + p]! + up * d.walls[next * pairs + p]!);
    }
    for (let z = 0; z < zones; z++) {
      const drawn = running * ((1 - up) * d.outdoor[at * zones + z]! + up * d.outdoor[next * zones + z]!);
      // A fan that draws and the weather that pushes add up as the root of their squares. Source: `coupling.fan-and-weather`.
      if (drawn > 0) outdoorFlow[z] = Math.sqrt(outdoorFlow[z]! * outdoorFlow[z]! + drawn * drawn);
    }
  }
}

/** kg/s of air that cold coils bring down to their own humidity, by zone, into `drying`; their kg/kg into `coilRatio`. */
export function setDrying(l: Layout, s: State): void {
  const { ducts: d, zones, systems } = l;
  const { ductLevel, ductToNext, ductRunning, drying, coilRatio } = s.work;
  drying.fill(0);
  placeDucts(l, s);
  for (let i = 0; i < d.count; i++) {
    let cooling = false;
    for (let j = 0; j < systems; j++) if (d.ofSystem[j] === i && s.heat[j]! < 0) cooling = true;
    if (!cooling) continue;
    const at = ductLevel[i]!;
    const up = ductToNext[i]!;
    const next = up > 0 ? at + 1 : at;
    for (let z = 0; z < zones; z++) {
      const flow = ductRunning[i]! * ((1 - up) * d.dries[at * zones + z]! + up * d.dries[next * zones + z]!);
      if (flow === 0) continue;
      drying[z] = drying[z]! + flow;
      coilRatio[z] = d.coilRatio[i]!;
    }
  }
}
