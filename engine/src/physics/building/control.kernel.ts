import { factor, solveFactored } from './dense.kernel.ts';
import type { Layout, State } from './layout.ts';

const off = 0;
/** A set point beyond this is off. */
const isOff = 1e8;
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
  takeSetPoints(l, s, step % l.stepsPerDay);
  for (let turn = 1; turn <= most; turn++) {
    heatOfHeld(l, s);
    if (!changeParts(l, s, turn > most / 2)) return turn;
  }
  return most;
}

/**
 * Sets what a system can give at most, W of heat and of cold, for the steps to come of a row: where something outside
 * the house, such as a battery, holds it back.
 */
export function limitSystem(l: Layout, s: State, system: number, row: number, heat: number, cold: number): void {
  const { mostRows, heatMost, coolMost } = l.control;
  const at = system * mostRows + (mostRows > 1 ? row : 0);
  heatMost[at] = heat;
  coolMost[at] = cold;
  s.work.heatMost[system] = heat;
  s.work.coolMost[system] = cold;
}

/** Sets the °C to which a system heats in one step of the day, from now on: where a rule moves what is wanted. */
export function aimHeat(l: Layout, system: number, slot: number, degrees: number): void {
  l.control.heatTo[system * l.stepsPerDay + slot] = degrees;
}

/** Whether a system gives all it can and its room would take more heat. */
export const wantsMore = (s: State, system: number): boolean => s.control[system] === atMost;

/** Whether a system cools all it can and its room would be cooled more. */
export const wantsMoreCold = (s: State, system: number): boolean => s.control[system] === -atMost;

/** The step's set points; a system whose set point is off now rests. */
function takeSetPoints(l: Layout, s: State, slot: number): void {
  const { heatAim, coolAim } = s.work;
  const { heatTo, coolTo } = l.control;
  for (let j = 0; j < l.systems; j++) {
    heatAim[j] = heatTo[j * l.stepsPerDay + slot]!;
    coolAim[j] = coolTo[j * l.stepsPerDay + slot]!;
    const part = s.control[j]!;
    if ((part > 0 && heatAim[j]! < -isOff) || (part < 0 && coolAim[j]! > isOff)) s.control[j] = off;
  }
}

/** °C at a system's thermostat with the heats as they stand. */
function sense(l: Layout, s: State, j: number): void {
  const { sensed, response } = s.work;
  const { systems } = l;
  const node = l.control.sensor[j]!;
  let t = s.free[node]!;
  for (let i = 0; i < systems; i++) t += response[node * systems + i]! * s.heat[i]!;
  sensed[j] = t;
}

/** Heats of the systems that are held to a set point, from the temperatures their rooms lack. */
function heatOfHeld(l: Layout, s: State): void {
  const { held, smallRhs, heldOf, heatAim, coolAim, sensed } = s.work;
  let count = 0;
  // The factors at hand are for the row, and the systems, that `heldOf` names.
  let same = heldOf[0] === heldOf[1];
  for (let j = 0; j < l.systems; j++) {
    const part = s.control[j]!;
    s.heat[j] = part === atMost ? s.work.heatMost[j]! : part === -atMost ? -s.work.coolMost[j]! : 0;
    if (part !== toSetPoint && part !== -toSetPoint) continue;
    same = same && held[count] === j;
    held[count] = j;
    count++;
  }
  if (count === 0) return;
  if (!same || heldOf[2] !== count) factorHeld(l, s, count);
  for (let a = 0; a < count; a++) {
    const j = held[a]!;
    sense(l, s, j);
    smallRhs[a] = (s.control[j]! > 0 ? heatAim[j]! : coolAim[j]!) - sensed[j]!;
  }
  solveFactored(s.work.small, count, smallRhs, 0);
  for (let a = 0; a < count; a++) s.heat[held[a]!] = smallRhs[a]!;
}

/** What a watt of each held system does to each held thermostat; kept while the row of weather and the set stay. */
function factorHeld(l: Layout, s: State, count: number): void {
  const { held, small, response, heldOf } = s.work;
  for (let a = 0; a < count; a++) {
    const row = l.control.sensor[held[a]!]! * l.systems;
    for (let b = 0; b < count; b++) small[a * count + b] = response[row + held[b]!]!;
  }
  factor(small, count);
  heldOf[0] = heldOf[1]!;
  heldOf[2] = count;
}

/** Changes the parts of systems that do what they should not; all at once, or, where that goes in circles, the first. */
function changeParts(l: Layout, s: State, oneOnly: boolean): boolean {
  let changed = false;
  for (let j = 0; j < l.systems; j++) {
    const part = s.control[j]!;
    // What is held to its set point is judged by its heat.
    if (part !== toSetPoint && part !== -toSetPoint) sense(l, s, j);
    let next = nextPart(s, j, part);
    if (next === toSetPoint && heldBefore(l, s, j)) next = off;
    if (next === part) continue;
    s.control[j] = next;
    changed = true;
    if (oneOnly) return true;
  }
  return changed;
}

/** Whether a system before this one holds the same thermostat: no two can hold one room at two set points. */
function heldBefore(l: Layout, s: State, j: number): boolean {
  for (let i = 0; i < j; i++)
    if (s.control[i] === toSetPoint && l.control.sensor[i] === l.control.sensor[j]) return true;
  return false;
}

function nextPart(s: State, j: number, part: number): number {
  const heat = s.heat[j]!;
  if (part === toSetPoint) return heat < 0 ? off : heat > s.work.heatMost[j]! ? atMost : part;
  if (part === -toSetPoint) return heat > 0 ? off : -heat > s.work.coolMost[j]! ? -atMost : part;
  const t = s.work.sensed[j]!;
  if (part === atMost) return t > s.work.heatAim[j]! + slack ? toSetPoint : part;
  if (part === -atMost) return t < s.work.coolAim[j]! - slack ? -toSetPoint : part;
  if (t < s.work.heatAim[j]! - slack) return toSetPoint;
  return t > s.work.coolAim[j]! + slack ? -toSetPoint : off;
}
