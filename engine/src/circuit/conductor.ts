import type { Range } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { eachEnd } from './rating.ts';
import type { Conductor, Drop, Rating } from './result.ts';
import { allowedAmpacity, type Laid, thinnestFor } from './wires/ampacity.ts';
import { gaugeArea, resistancePerMetre } from './wires/gauges.ts';
import { ampacityTable, type Metal } from './wires/tables.ts';
import { voltageDrop } from './wires/voltageDrop.ts';

/** °C of a conductor at work; the drop is taken there, which is its larger end. */
const atWork = 75;

/** What every conductor of a run shares. */
export type Lying = Omit<Laid, 'ambient'>;
export type Line = {
  readonly metal: Metal;
  readonly voltage: number;
  readonly phases: 'one' | 'three';
};

/** The gauge a conductor counts as: its own, or the next thinner one of a metric size. Undefined below the table. */
const countsAs = (area: number, metal: Metal): number | undefined =>
  ampacityTable[metal].findLast((r) => gaugeArea(r.n) <= area * 1.005)?.n;

export function gaugeIn(area: number, metal: Metal): { gauge?: number } {
  const gauge = countsAs(area, metal);
  return gauge === undefined ? {} : { gauge };
}

/** The thinnest conductor that carries the rating in the hottest air. Ends the attempt where the tables end. */
export function byAmpacity(rating: Rating, ambient: Range, lying: Lying, path: string): number {
  return thinnestFor(rating.least.high, { ...lying, ambient: ambient.high }) ?? unresolved('out-of-range', path);
}

/** That one, or the first thicker one that loses no more than `dropMost`; the thickest of the table where none does. */
export function picked(
  thinnest: number,
  line: Line,
  current: Range,
  length: Range | undefined,
  dropMost: number,
): Conductor {
  const rows = ampacityTable[line.metal];
  const from = rows.findIndex((r) => r.n === thinnest);
  const good = (n: number): boolean =>
    length === undefined || dropOf(gaugeArea(n), line, current, length).share.high <= dropMost + 1e-12;
  const n = rows.slice(from).find((r) => good(r.n))?.n ?? rows.at(-1)?.n ?? thinnest;
  return { area: gaugeArea(n), gauge: n, own: false };
}

/** A that a conductor may carry where it lies: 0 where it is thinner than the table or may not lie so hot. */
export function ampacityOf(conductor: Conductor, ambient: Range, lying: Lying, recorder: WorkingRecorder): Range {
  const { gauge } = conductor;
  const at = (t: number, rec?: WorkingRecorder): number =>
    gauge === undefined ? 0 : (allowedAmpacity(gauge, { ...lying, ambient: t }, rec)?.ampacity ?? 0);
  const likely = at(ambient.likely, recorder);
  if (likely === 0) recorder.step('I', 'table', { A: conductor.area }, 0, 'A', 'circuit.ampacity');
  return { low: at(ambient.high), likely, high: at(ambient.low) };
}

/** V and share lost along a run. Ends the attempt where the supply has no voltage. */
export function dropOf(area: number, line: Line, current: Range, length: Range, recorder?: WorkingRecorder): Drop {
  if (!(line.voltage > 0)) return unresolved('missing', 'power.voltage');
  const resistance = resistancePerMetre(area, atWork, line.metal, recorder);
  const at = (end: keyof Range, rec?: WorkingRecorder): number =>
    voltageDrop({ current: current[end], resistance, length: length[end], phases: line.phases }, rec);
  const likely = at('likely', recorder);
  const volts = { low: at('low'), likely, high: at('high') };
  const share = eachEnd((end) => volts[end] / line.voltage);
  recorder?.step('share', 'U_drop / U', { U_drop: likely, U: line.voltage }, share.likely, '', 'circuit.drop');
  return { volts, share };
}
