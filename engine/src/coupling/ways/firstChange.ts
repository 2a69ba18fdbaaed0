import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import { flowSolver, nominalAir } from '../../air/flows.ts';
import { resized } from '../../air/mend.ts';
import { stockedRounds } from '../../air/sizes.ts';

/** One section made the next stocked size, and what flows and presses then: m, m³/s, Pa. */
export type SectionChange = {
  readonly section: string;
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly flow: number;
  readonly staticPressure: number;
};

/** The round duct as wide as a section's area, for sections that are not round. */
const roundOf = ({ area }: DuctSection): number => Math.sqrt((4 * area) / Math.PI);

/**
 * Which section to change first: each made the next stocked round size, one at a time, and everything solved again.
 * Most air gained first. Sections already at the largest stocked size are left out.
 */
export function sectionChanges(model: AirModel): SectionChange[] {
  const solve = flowSolver();
  const changes = model.sections.flatMap((x): SectionChange[] => {
    const from = roundOf(x);
    const to = stockedRounds.find((d) => d > from + 1e-6);
    if (to === undefined) return [];
    const { converged, flow, staticPressure } = solve(resized(model, x.id, to), nominalAir);
    return converged ? [{ section: x.id, name: x.name, from, to, flow, staticPressure }] : [];
  });
  return changes.sort((a, b) => b.flow - a.flow || (a.section < b.section ? -1 : 1));
}
