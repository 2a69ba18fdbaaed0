import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import type { WallLayer } from './spec.ts';

/**
 * A layered wall over one step, each m² of it: with its two faces held at T1 and T2 through the step, the mean heat into
 * it is `near T1 - across T2 - Σ q1 ζ - fast.near P1 - fast.across P2` at the first face, W/m², and the mirror of it at
 * the second; P1 and P2 are the faces of the step before. A mode goes on as ζ' = decay ζ + q1 T1 + q2 T2. Modes that
 * forget within a step stand summed in `fast`. Heat held, J/m², is Σ energy ζ + fast.energy1 T1 + fast.energy2 T2.
 */
export type SlabModes = {
  readonly near: number;
  readonly far: number;
  readonly across: number;
  readonly slow: readonly SlowMode[];
  readonly fast: FastModes;
};
export type SlowMode = { readonly decay: number; readonly q1: number; readonly q2: number; readonly energy: number };
export type FastModes = {
  readonly near: number;
  readonly far: number;
  readonly across: number;
  readonly energy1: number;
  readonly energy2: number;
};

/**
 * Share of a mode that may be left after a step for it to be taken to forget all; what it holds is kept, so no heat is
 * lost. A thirtieth moves temperatures by less than a thousandth of a kelvin and a year's heat by less than 0.01 %.
 */
export const usuallyForgotten = 0.03;
/** Share of the depth that heat reaches in a step that one cell may be thick. */
const fineness = 0.2;

export type Chain = { readonly capacities: number[]; readonly links: number[] };

/**
 * Modes of a wall for steps of so many seconds. Layers inside first; a wall without mass has no modes. Throws a
 * RangeError for a thickness, conductivity or resistance that is not above zero.
 *
 * Each layer is cut into cells much thinner than heat reaches in a step, and the equations of the cells are solved by
 * their eigenvectors, so that nothing but the cutting is approximate.
 */
export function slabModes(layers: readonly WallLayer[], stepSeconds: number, forgotten = usuallyForgotten): SlabModes {
  const { capacities, links } = wallChain(layers, stepSeconds);
  const n = capacities.length;
  if (n === 0) return massless(links[0] ?? 0);
  const roots = capacities.map(Math.sqrt);
  const inner = (links[0] ?? 0) / (roots[0] ?? 1);
  const outer = (links[n] ?? 0) / (roots[n - 1] ?? 1);
  const { values, vectors } = eigenOf(capacities, links, roots);
  const modes = values.map((rate, k) => {
    const p1 = vectors.get(0, k) * inner;
    const p2 = vectors.get(n - 1, k) * outer;
    const left = Math.exp(-rate * stepSeconds);
    const decay = left < forgotten ? 0 : left;
    const gain = (1 - decay) / rate;
    const scale = Math.sqrt(stepSeconds);
    const held = roots.reduce((sum, root, i) => sum + root * vectors.get(i, k), 0);
    // What a face held at one degree draws once the mode has settled, less what it still takes to settle.
    const settled = (1 - gain / stepSeconds) / rate;
    return { p1, p2, settled, decay, q1: (p1 * gain) / scale, q2: (p2 * gain) / scale, energy: scale * held };
  });
  const fast = modes.filter((m) => m.decay === 0);
  return {
    near: (links[0] ?? 0) - sum(modes, (m) => m.p1 * m.p1 * m.settled),
    far: (links[n] ?? 0) - sum(modes, (m) => m.p2 * m.p2 * m.settled),
    across: sum(modes, (m) => m.p1 * m.p2 * m.settled),
    slow: modes.filter((m) => m.decay > 0).map(({ decay, q1, q2, energy }) => ({ decay, q1, q2, energy })),
    fast: {
      near: sum(fast, (m) => m.q1 * m.q1),
      far: sum(fast, (m) => m.q2 * m.q2),
      across: sum(fast, (m) => m.q1 * m.q2),
      energy1: sum(fast, (m) => m.energy * m.q1),
      energy2: sum(fast, (m) => m.energy * m.q2),
    },
  };
}

const massless = (conductance: number): SlabModes => ({
  near: conductance,
  far: conductance,
  across: conductance,
  slow: [],
  fast: { near: 0, far: 0, across: 0, energy1: 0, energy2: 0 },
});

const sum = <T>(of: readonly T[], f: (x: T) => number): number => of.reduce((total, x) => total + f(x), 0);

/** Cells and the conductances between them, faces included: one link more than cells. */
export function wallChain(layers: readonly WallLayer[], stepSeconds: number): Chain {
  const capacities: number[] = [];
  const links: number[] = [];
  let resistance = 0;
  for (const layer of layers) {
    if ('resistance' in layer) {
      resistance += above(layer.resistance, 'resistance');
      continue;
    }
    const { thickness, conductivity, density, heat } = layer;
    const whole = above(thickness, 'thickness') / above(conductivity, 'conductivity');
    const capacity = density * heat * thickness;
    if (!(capacity >= 0)) throw new RangeError('density and heat of a layer cannot be below zero');
    if (capacity === 0) {
      resistance += whole;
      continue;
    }
    const reach = Math.sqrt((conductivity * stepSeconds) / (density * heat));
    const cells = Math.max(2, Math.ceil(thickness / (fineness * reach)));
    for (let i = 0; i < cells; i++) {
      links.push(1 / (resistance + whole / (2 * cells)));
      capacities.push(capacity / cells);
      resistance = whole / (2 * cells);
    }
  }
  if (resistance <= 0) throw new RangeError('a wall needs at least one layer');
  links.push(1 / resistance);
  return { capacities, links };
}

function above(x: number, what: string): number {
  if (!(x > 0)) throw new RangeError(`${what} of a layer has to be above zero`);
  return x;
}

/** Rates, 1/s, and shapes of the cells' equations, made symmetric by the roots of the capacities. */
function eigenOf(capacities: readonly number[], links: readonly number[], roots: readonly number[]) {
  const n = capacities.length;
  const matrix = Matrix.zeros(n, n);
  for (let i = 0; i < n; i++) {
    matrix.set(i, i, ((links[i] ?? 0) + (links[i + 1] ?? 0)) / (capacities[i] ?? 1));
    if (i + 1 === n) continue;
    const coupling = -(links[i + 1] ?? 0) / ((roots[i] ?? 1) * (roots[i + 1] ?? 1));
    matrix.set(i, i + 1, coupling);
    matrix.set(i + 1, i, coupling);
  }
  const found = new EigenvalueDecomposition(matrix, { assumeSymmetric: true });
  return { values: found.realEigenvalues, vectors: found.eigenvectorMatrix };
}
