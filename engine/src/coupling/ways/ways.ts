import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import { changedDucts, type DuctsInputs } from '../ducted/ductworks.ts';
import { leftAfterMastic } from '../houseYear/measures.ts';

/** What can be done with ducts that are there or drawn, and where else the unit could stand. */
export const wayIds = ['as-drawn', 'sealed', 'wrapped', 'buried', 'resized', 'inside', 'kneewall', 'rooms'] as const;
export type WayId = (typeof wayIds)[number];

/** m²K/W: a wrap as codes ask in an attic, and ducts deep in blown insulation. Sources: `ways.wrap`, `ways.buried`. */
const wrap = 1.409;
const deep = 4.403;
/** Share that new, sealed joints let out. Source: `ways.new-joints` (common practice). */
const newJoints = 0.01;

const isOutside = (x: DuctSection): boolean => x.place !== 'inside';
const tight = (x: DuctSection): DuctSection => ({ ...x, leakage: x.leakage * leftAfterMastic });
const wrapped = (x: DuctSection): DuctSection =>
  isOutside(x) ? { ...tight(x), insulation: Math.max(x.insulation, wrap) } : tight(x);

/** The ways that are read off others: behind a knee wall lies between wrapped and inside. */
export type RunWay = Exclude<WayId, 'kneewall'>;

/**
 * The ducts in each way; `resized` only where best sizes are known, the others only where something lies outside the
 * rooms. Units in the rooms themselves are ducts that neither leak nor lose.
 */
export function ducted(way: RunWay, ducts: DuctsInputs, best: AirModel | undefined): DuctsInputs | undefined {
  const outside = ducts.model.sections.some(isOutside);
  const changed = (change: (x: DuctSection) => DuctSection): DuctsInputs => changedDucts(ducts, change);
  if (way === 'as-drawn') return ducts;
  if (way === 'rooms') return changed((x) => ({ ...x, insulation: 1e6, leakage: 0 }));
  if (way === 'resized')
    return best
      ? changedDucts({ ...ducts, model: best }, (x) => ({
          ...wrapped(x),
          leakage: Math.min(tight(x).leakage, newJoints),
        }))
      : undefined;
  if (!outside) return undefined;
  if (way === 'sealed') return changed(tight);
  if (way === 'wrapped') return changed(wrapped);
  if (way === 'buried')
    return ducts.model.sections.some((x) => x.place === 'attic')
      ? changed((x) => (x.place === 'attic' ? { ...wrapped(x), insulation: deep } : wrapped(x)))
      : undefined;
  return changed((x) => ({ ...tight(x), place: 'inside' }));
}
