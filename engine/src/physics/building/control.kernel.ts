import { factor, solveFactored } from './dense.kernel.ts';
import type { Layout, State } from './layout.ts';

const off = 0;
const toSetPoint = 1;
const atMost = 2;
/** K that a room may be past its set point before a system's part changes, far below what is shown. */
const slack = 1e-9;

/**
 * Finds each system's heat so that every thermostat is at its set point or its system at its most, and rests where the
 * room needs neither. Starts from what each did the step before. Returns how many turns it took; `l.systems * 4 + 8` at
 * most, then the last answer stands (two systems that fight over one room).
 */
export function controlSystems(l: Layout, s: State, step: number): number {
  const most = l.systems * 4 + 8;
  const slot = step % l.stepsPerDay;
  for (let j = 0; j < l.systems; j++) if (wanted(l, j, slot, s.control[j]!) === 0) s.control[j] = off;
  for (let turn = 1; turn <= most; turn++) {
    heatOfHeld(l, s, slot);
    if (!changeParts(l, s, slot, turn > most / 2)) return turn;
  }
  return most;
}

/** Whether a set point exists for the part a system plays. */
const wanted = (l: Layout, j: number, slot: number, part: number): number =>
  part === off
    ? 1
    : Math.abs(part > 0 ? l.control.heatTo[j * l.stepsPerDay + slot]! : l.control.coolTo[j * l.stepsPerDay + slot]!) <
        1e8
      ? 1
      : 0;

const setPoint = (l: Layout, j: number, slot: number, part: number): number =>
  part > 0 ? l.control.heatTo[j * l.stepsPerDay + slot]! : l.control.coolTo[j * l.stepsPerDay + slot]!;

/** °C at every thermostat with the heats as they stand. */
function sense(l: Layout, s: State): void {
  const n = 2 * l.zones;
  const { sensed, response } = s.work;
  for (let j = 0; j < l.systems; j++) {
    const node = l.control.sensor[j]!;
    let t = s.free[node]!;
    for (let i = 0; i < l.systems; i++) t += response[i * n + node]! * s.heat[i]!;
    sensed[j] = t;
  }
}

/** Heats of the systems that are held to a set point, from the temperatures their rooms lack. */
function heatOfHeld(l: Layout, s: State, slot: number): void {
  const { held, smallRhs, heldOf } = s.work;
  let count = 0;
  // The factors at hand are for the row, and the systems, that `heldOf` names.
  let same = heldOf[0] === heldOf[1];
  for (let j = 0; j < l.systems; j++) {
    const part = s.control[j]!;
    s.heat[j] = part === atMost ? l.control.heatMost[j]! : part === -atMost ? -l.control.coolMost[j]! : 0;
    if (part !== toSetPoint && part !== -toSetPoint) continue;
    same = same && held[count] === j;
    held[count] = j;
    count++;
  }
  if (count === 0) return;
  if (!same || heldOf[2] !== count) factorHeld(l, s, count);
  sense(l, s);
  for (let a = 0; a < count; a++) {
    const j = held[a]!;
    smallRhs[a] = setPoint(l, j, slot, s.control[j]!) - s.work.sensed[j]!;
  }
  solveFactored(s.work.small, count, smallRhs, 0);
  for (let a = 0; a < count; a++) s.heat[held[a]!] = smallRhs[a]!;
}

/** What a watt of each held system does to each held thermostat; kept while the row of weather and the set stay. */
function factorHeld(l: Layout, s: State, count: number): void {
  const n = 2 * l.zones;
  const { held, small, response, heldOf } = s.work;
  for (let a = 0; a < count; a++) {
    const node = l.control.sensor[held[a]!]!;
    for (let b = 0; b < count; b++) small[a * count + b] = response[held[b]! * n + node]!;
  }
  factor(small, count);
  heldOf[0] = heldOf[1]!;
  heldOf[2] = count;
}

/** Changes the parts of systems that do what they should not; all at once, or, where that goes in circles, the first. */
function changeParts(l: Layout, s: State, slot: number, oneOnly: boolean): boolean {
  let changed = false;
  sense(l, s);
  for (let j = 0; j < l.systems; j++) {
    const part = s.control[j]!;
    const next = nextPart(l, s, j, slot, part);
    if (next === part) continue;
    s.control[j] = next;
    changed = true;
    if (oneOnly) return true;
  }
  return changed;
}

function nextPart(l: Layout, s: State, j: number, slot: number, part: number): number {
  const heat = s.heat[j]!;
  if (part === toSetPoint) return heat < 0 ? off : heat > l.control.heatMost[j]! ? atMost : part;
  if (part === -toSetPoint) return heat > 0 ? off : -heat > l.control.coolMost[j]! ? -atMost : part;
  const t = s.work.sensed[j]!;
  if (part === atMost) return t > setPoint(l, j, slot, 1) + slack ? toSetPoint : part;
  if (part === -atMost) return t < setPoint(l, j, slot, -1) - slack ? -toSetPoint : part;
  if (t < setPoint(l, j, slot, 1) - slack) return toSetPoint;
  return t > setPoint(l, j, slot, -1) + slack ? -toSetPoint : off;
}
