import type { Recorder } from '../../physics/recorder.ts';

/** One phase goes out and back; three phases share their way back. */
export const wayFactor = (phases: 'one' | 'three'): number => (phases === 'three' ? Math.sqrt(3) : 2);

/**
 * V lost along a run: `current` A, Ω for each metre of one conductor, `length` m one way. Resistance only, which is all
 * there is to thin conductors. Source: `circuit.drop`.
 */
export function voltageDrop({ current, resistance, length, phases = 'one' }: DropOf, rec?: Recorder): number {
  const k = wayFactor(phases);
  const drop = k * current * resistance * length;
  rec?.step('U_drop', 'k * I * R * L', { k, I: current, R: resistance, L: length }, drop, 'V', 'circuit.drop');
  return drop;
}

export type DropOf = {
  readonly current: number;
  readonly resistance: number;
  readonly length: number;
  readonly phases?: 'one' | 'three';
};
