import type { Assembly, ConstructionId, SurfaceKind } from './construction.ts';
import { libraryU } from './library.ts';

/** What a part is usually made of where only its U is known. Source: `loads.by-kind`. */
const usual: Readonly<Record<SurfaceKind, readonly ConstructionId[]>> = {
  wall: ['wall-empty', 'wall-thin', 'wall-r11', 'wall-r19', 'wall-r20-continuous'],
  ceiling: ['ceiling-bare', 'ceiling-r7', 'ceiling-r11', 'ceiling-r19', 'ceiling-r30', 'ceiling-r49'],
  roof: ['roof-batt'],
  floor: ['floor-bare', 'floor-r11', 'floor-r19', 'floor-r30'],
  door: ['door-wood'],
};
const onGround: Readonly<Partial<Record<SurfaceKind, readonly ConstructionId[]>>> = {
  wall: ['wall-block', 'wall-block-foam'],
  floor: ['slab'],
};

/** Of the constructions usual for a kind of surface, the one whose U is nearest. W/(m²K). */
export function nearestOf(kind: SurfaceKind, ground: boolean, u: number): ConstructionId {
  const candidates = (ground ? onGround[kind] : undefined) ?? usual[kind];
  const apart = (id: ConstructionId): number => Math.abs(Math.log(u / libraryU(id, 1)));
  return candidates.reduce((a, b) => (apart(b) < apart(a) ? b : a));
}

/** Which construction stands for an assembly without layers of its own, and whether the person chose it. */
export type BuiltAs = { readonly choice: ConstructionId; readonly by: 'chosen' | 'kind' | 'assumed' };

/**
 * The common construction of an assembly: the one that was chosen, else by its kind the one nearest to its U, else the
 * one that is assumed. Undefined where nothing is known.
 */
export function builtAs({ common, uValue }: Assembly, kind: SurfaceKind, ground: boolean): BuiltAs | undefined {
  if (!('missing' in common) && common.known === 'entered') return { choice: common.choice, by: 'chosen' };
  if (!('missing' in uValue)) return { choice: nearestOf(kind, ground, uValue.likely), by: 'kind' };
  return 'missing' in common ? undefined : { choice: common.choice, by: 'assumed' };
}
