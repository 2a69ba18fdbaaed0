import { compressionFactor } from '../physics/flow/index.ts';
import type { AirFlows, AirModel, DuctSection } from './ductwork.ts';
import { flowSolver, nominalAir } from './flows.ts';
import { stockedRounds } from './sizes.ts';

/** One duct made another size, and what flows then. */
export type Change = { readonly section: DuctSection; readonly diameter: number; readonly flows: AirFlows };

/** The model with one section of another round size. Slack flexible duct keeps its slack: its factor follows the size. */
export function resized(model: AirModel, id: string, diameter: number): AirModel {
  return { ...model, sections: model.sections.map((x) => (x.id === id ? withDiameter(x, diameter) : x)) };
}

/** Compression of a flexible duct as a share of its stretched length, from its friction factor; 0 for other kinds. */
export const slackOf = (x: DuctSection): number =>
  // compression × e^(-0.126 D) scales with the size; what remains of the factor is the compression itself.
  x.kind === 'flexible' ? (x.frictionFactor - 1) / (compressionFactor(1, x.diameter) - 1) : 0;

function withDiameter(x: DuctSection, diameter: number): DuctSection {
  const slack = slackOf(x);
  return {
    ...x,
    diameter,
    area: (Math.PI * diameter * diameter) / 4,
    surface: Math.PI * diameter * x.length,
    frictionFactor: 1 + slack * (compressionFactor(1, diameter) - 1),
  };
}

/**
 * Looks for the smallest single change of size that makes `good` hold, by solving the whole system again for each
 * stocked size of each section that may still be changed. Undefined where no single change is enough.
 */
export function smallestChange(
  model: AirModel,
  free: readonly string[],
  good: (flows: AirFlows, changed: AirModel) => boolean,
): Change | undefined {
  const round = model.sections.filter((x) => free.includes(x.id) && (x.kind === 'flexible' || x.kind === 'round'));
  const solve = flowSolver();
  for (let step = 1; step <= 3; step++) {
    const tries = round.flatMap((section) => {
      const bigger = stockedRounds.filter((d) => d > section.diameter + 1e-6)[step - 1];
      if (bigger === undefined) return [];
      const changed = resized(model, section.id, bigger);
      const flows = solve(changed, nominalAir);
      return flows.converged && good(flows, changed) ? [{ section, diameter: bigger, flows }] : [];
    });
    const best = tries.sort(
      (a, b) => a.flows.staticPressure - b.flows.staticPressure || (a.section.id < b.section.id ? -1 : 1),
    )[0];
    if (best) return best;
  }
  return undefined;
}
