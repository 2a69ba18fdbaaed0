import type { PowerRecord } from './powerLoop.kernel.ts';

/** Room for a run's record. */
export function emptyRecord(steps: number): PowerRecord {
  const made = (): Float64Array => new Float64Array(steps);
  return {
    household: made(),
    unit: made(),
    standing: made(),
    heat: made(),
    refused: made(),
    used: made(),
    generator: made(),
    short: made(),
    out: made(),
    heater: made(),
    lost: made(),
    charge: made(),
    cell: made(),
    room: made(),
    held: new Uint8Array(steps),
    cold: made(),
    stove: made(),
    residual: new Float64Array(1),
  };
}
