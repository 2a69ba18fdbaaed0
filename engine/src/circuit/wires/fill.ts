import type { Recorder } from '../../physics/recorder.ts';
import { insulatedAreas, type Pipe, pipes } from './tables.ts';

/** Share of a pipe's inside that so many conductors may take. Source: `circuit.fill`. */
export const fillMost = (count: number): number => (count <= 1 ? 0.53 : count === 2 ? 0.31 : 0.4);

/** mm² of gauge `n` over its insulation; undefined for a gauge the table does not have. Source: `circuit.fill`. */
export const insulatedArea = (n: number): number | undefined => insulatedAreas.find((r) => r.n === n)?.area;

/** mm² inside a round pipe of `diameter` m. */
export const insideArea = (diameter: number): number => (Math.PI / 4) * (1000 * diameter) ** 2;

/** Share of a pipe's inside that conductors of `areas` mm² take together. Not for a diameter of 0. Source: `circuit.fill`. */
export function pipeFill(areas: readonly number[], diameter: number, rec?: Recorder): number {
  const wires = areas.reduce((a, b) => a + b, 0);
  const inside = insideArea(diameter);
  const share = wires / inside;
  rec?.step('A_pipe', 'pi / 4 * (1000 * d)^2', { d: diameter, pi: Math.PI }, inside, 'mm²', 'circuit.fill');
  rec?.step('share', 'A_wires / A_pipe', { A_wires: wires, A_pipe: inside }, share, '', 'circuit.fill');
  return share;
}

/** The smallest pipe that is sold for conductors of `areas` mm²; undefined where none of the table holds them. */
export const smallestPipe = (areas: readonly number[]): Pipe | undefined =>
  pipes.find((p) => pipeFill(areas, p.diameter) <= fillMost(areas.length) + 1e-9);
