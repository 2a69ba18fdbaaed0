import type { Candidate, Ranked } from './result.ts';

/** Candidates side by side: first those that hold the cold night, then those that run longest without stopping. */
export function rank(candidates: readonly Candidate[]): Ranked[] {
  return candidates
    .map((c): Ranked => {
      const cycling =
        c.cyclingHours.ok && c.heatingHours.ok && c.heatingHours.value > 0
          ? c.cyclingHours.value / c.heatingHours.value
          : undefined;
      const holds = c.heatingSpare.ok ? c.heatingSpare.value.likely >= 0 : undefined;
      return {
        id: c.id,
        ...(holds === undefined ? {} : { holds }),
        ...(cycling === undefined ? {} : { steadyShare: 1 - cycling }),
      };
    })
    .sort(
      (a, b) =>
        order(b.holds) - order(a.holds) || (b.steadyShare ?? -1) - (a.steadyShare ?? -1) || (a.id < b.id ? -1 : 1),
    );
}

const order = (holds: boolean | undefined): number => (holds === undefined ? 1 : holds ? 2 : 0);
