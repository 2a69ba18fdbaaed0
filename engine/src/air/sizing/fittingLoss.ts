import { type FittingKind, type FittingShape, fittingLoss } from '../../physics/flow/index.ts';
import type { DuctKind } from './stock.ts';

export type Fitting = { readonly kind: FittingKind; readonly count: number; readonly shape: FittingShape };

/** How a bend is made in each kind of duct. */
const bends: Readonly<Record<DuctKind, readonly FittingKind[]>> = {
  flexible: ['bend-flexible', 'elbow-round-tight'],
  round: ['elbow-round', 'elbow-round-tight'],
  rectangular: ['elbow-rectangular', 'elbow-rectangular-vaned'],
  board: ['elbow-rectangular', 'elbow-rectangular-vaned'],
};
const anyBend: ReadonlySet<FittingKind> = new Set(Object.values(bends).flat());

/** A fitting as it is made in another kind of duct: a bend becomes that kind's ordinary bend, the rest stays. */
const madeIn = (kind: DuctKind, fitting: FittingKind): FittingKind =>
  anyBend.has(fitting) && !bends[kind].includes(fitting) ? (bends[kind][0] ?? fitting) : fitting;

/** A fitting's coefficient in that kind of duct; one made as another kind of bend has that bend's usual radius. NaN where no table covers it. */
function lossOf(kind: DuctKind, fitting: Fitting): number {
  const made = madeIn(kind, fitting.kind);
  const looked = fittingLoss(made, made === fitting.kind ? fitting.shape : {});
  return looked.ok ? looked.value : Number.NaN;
}

/** Sum of loss coefficients on the duct's own velocity pressure. Source: `flow.fittings`. */
export const lossIn = (kind: DuctKind, fittings: readonly Fitting[]): number =>
  fittings.reduce((a, f) => a + f.count * lossOf(kind, f), 0);

export const bendsAmong = (fittings: readonly Fitting[]): number =>
  fittings.reduce((a, f) => a + (anyBend.has(f.kind) ? f.count : 0), 0);
