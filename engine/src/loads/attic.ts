import { steadyAttic } from '../physics/attic/index.ts';
import type { Recorder } from '../physics/recorder.ts';

export type AtticAt = {
  readonly mode: 'heating' | 'cooling';
  readonly outdoor: number;
  readonly indoor: number;
  /** W that ducts put into the attic; negative where they take it. */
  readonly ductHeat: number;
};

/** Attic air on the design night or at the design hour, °C; steady. Source: `attic.steady`. */
export function atticTemperature(model: AtticModel, at: AtticAt, rec?: Recorder): number {
  const roof = at.mode === 'cooling' ? at.outdoor + model.sunRise : at.outdoor - model.skyDrop;
  return steadyAttic(model, { rooms: at.indoor, roof, air: at.outdoor, ducts: at.ductHeat }, rec);
}

/** A steady attic: everything its temperature hangs on. Conductances W/K. */
export type AtticModel = {
  readonly ceiling: number;
  readonly roof: number;
  /** Of outdoor air passing through. */
  readonly vents: number;
  /** K that the sun adds to the outdoor air at the roof, at the design hour; what the night sky takes off, at night. */
  readonly sunRise: number;
  readonly skyDrop: number;
};
