import type { Recorder } from '../../physics/recorder.ts';
import { ambientFactors, ampacityTable, type Column, columns, type Metal, togetherFactors } from './tables.ts';

/** A in one column of the table; undefined for a gauge that the table does not hold. Source: `circuit.ampacity`. */
export const tableAmpacity = (n: number, column: Column, metal: Metal = 'copper'): number | undefined =>
  ampacityTable[metal].find((r) => r.n === n)?.ampacity[columns.indexOf(column)];

/**
 * What air of `ambient` °C leaves of a column's ampacity. Cooler than 21 °C it stays at the table's row for 21 to 25.
 * Undefined where the column may not be used so hot. Source: `circuit.ambient`.
 */
export const ambientFactor = (ambient: number, column: Column): number | undefined =>
  ambientFactors.find((r) => ambient <= r.upTo + 1e-9)?.factors[columns.indexOf(column)];

/** What so many current-carrying conductors side by side leave; undefined beyond 40. Source: `circuit.together`. */
export const togetherFactor = (count: number): number | undefined =>
  togetherFactors.find((r) => count <= r.upTo + 1e-9)?.factor;

/** Where and how conductors lie. `insulation`: what they may reach; `terminals`: what the coolest end may reach, °C. */
export type Laid = {
  readonly metal: Metal;
  readonly insulation: Column;
  readonly terminals: Column;
  readonly ambient: number;
  readonly together: number;
};

/** A that a conductor may carry: what its place leaves, what its ends allow, and the lower of both. */
export type Allowed = {
  readonly table: number;
  readonly ambientFactor: number;
  readonly togetherFactor: number;
  readonly inPlace: number;
  readonly atTerminals: number;
  readonly ampacity: number;
};

/**
 * The ampacity of gauge `n` as laid. Ambient and bundling are taken from the insulation's own column; the ends limit it
 * by their column, which is not corrected. Undefined where a table does not reach. Sources: `circuit.ampacity`,
 * `circuit.ambient`, `circuit.together`, `circuit.terminals`.
 */
export function allowedAmpacity(n: number, laid: Laid, rec?: Recorder): Allowed | undefined {
  const table = tableAmpacity(n, laid.insulation, laid.metal);
  const atTerminals = tableAmpacity(n, laid.terminals, laid.metal);
  const ambient = ambientFactor(laid.ambient, laid.insulation);
  const together = togetherFactor(laid.together);
  if (table === undefined || atTerminals === undefined || ambient === undefined || together === undefined)
    return undefined;
  const inPlace = table * ambient * together;
  const ampacity = Math.min(inPlace, atTerminals);
  const source = laid.metal === 'copper' ? 'circuit.ampacity' : 'circuit.ampacity-aluminium';
  rec?.step('I_table', 'table', {}, table, 'A', source);
  rec?.step('f_air', 'table', { t_air: laid.ambient }, ambient, '', 'circuit.ambient');
  rec?.step('f_together', 'table', { n: laid.together }, together, '', 'circuit.together');
  const inputs = { I_table: table, f_air: ambient, f_together: together };
  rec?.step('I_place', 'I_table * f_air * f_together', inputs, inPlace, 'A', source);
  rec?.step('I_ends', 'table', { t_ends: laid.terminals }, atTerminals, 'A', 'circuit.terminals');
  rec?.step('I', 'min(I_place, I_ends)', { I_place: inPlace, I_ends: atTerminals }, ampacity, 'A', 'circuit.terminals');
  return { table, ambientFactor: ambient, togetherFactor: together, inPlace, atTerminals, ampacity };
}

/** The thinnest gauge of the table that may carry `current` A as laid; undefined when none does. */
export const thinnestFor = (current: number, laid: Laid): number | undefined =>
  ampacityTable[laid.metal].find((r) => (allowedAmpacity(r.n, laid)?.ampacity ?? 0) >= current - 1e-9)?.n;
