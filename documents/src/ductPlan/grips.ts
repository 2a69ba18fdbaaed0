import type { Spot } from './ductFacts.ts';
import type { Rect } from './labels.ts';
import { between, lengthOf, longestOf, meets, squareAt } from './stretches.ts';

/** Where a duct is taken hold of: a spot on its wall, and the direction (of length 1) that makes it wider. */
export type Grip = { readonly id: string; readonly at: Spot; readonly out: Spot };

type Held = { readonly id: string; readonly way: readonly Spot[]; readonly width: number };

/** Shares of the longest stretch at which a grip may stand, the best first: its middle has the arrow. */
const shares = [0.3, 0.7, 0.2, 0.8, 0.4, 0.6];

/**
 * A grip for every duct, half of it beyond the wall, where it covers no other duct, mark or grip as far as there is
 * such a place. A way that runs straight up has no wall in plan: its grip stands beside it. Deterministic.
 */
export function placeGrips(ducts: readonly Held[], drawn: readonly Rect[], half: number): Grip[] {
  const placed: Grip[] = [];
  for (const duct of ducts) {
    const boxes = placed.map((g) => squareAt(g.at, half));
    const choices = choicesFor(duct, half);
    const badness = (g: Grip): number => {
      const beyond = squareAt([g.at[0] + g.out[0] * half, g.at[1] + g.out[1] * half], half * 0.7);
      return (
        10 * boxes.filter((b) => meets(b, squareAt(g.at, half))).length + drawn.filter((b) => meets(b, beyond)).length
      );
    };
    placed.push(choices.reduce((best, g) => (badness(g) < badness(best) ? g : best)));
  }
  return placed;
}

function choicesFor({ id, way, width }: Held, half: number): [Grip, ...Grip[]] {
  const stretch = longestOf(way);
  const [from, to] = stretch;
  const long = lengthOf(stretch);
  const across: Spot = long > 0 ? [(to[1] - from[1]) / long, (from[0] - to[0]) / long] : [1, 0];
  const grip = (share: number, side: number): Grip => {
    const [x, y] = between(from, to, share);
    const out: Spot = [across[0] * side, across[1] * side];
    const away = width / 2 + (long > 0 ? 0 : half);
    return { id, at: [x + out[0] * away, y + out[1] * away], out };
  };
  const all = shares.flatMap((share) => [grip(share, 1), grip(share, -1)]);
  return [grip(0.3, 1), ...all];
}
