import type { ResolvedProject } from '@kneewall/project';
import { attempt, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { Electrics } from './rating.ts';
import type { Between } from './result.ts';

/** The cable between the two units: the maker's wishes beside what is meant to be pulled. */
export function betweenOf(electrics: Electrics, input: ResolvedProject['routes']['wires']['between']): Between {
  const s = scenario();
  const longest = s.maybe(electrics.between.longest);
  const size = s.maybe(electrics.between.size);
  return {
    wanted: attempt(() => s.of(electrics.between.conductors)),
    conductors: attempt(() => s.of(input.conductors)),
    length: attempt(() => {
      if ('missing' in input.length) return unresolved('missing', input.length.path);
      const { low, likely, high } = input.length;
      return { low, likely, high };
    }),
    screened: s.choice(electrics.between.screened) === 'yes',
    ...(longest === undefined ? {} : { longest }),
    ...(size === undefined ? {} : { size }),
  };
}
