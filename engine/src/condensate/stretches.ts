import { inOrder } from '@kneewall/project';
import type { Frosts } from '../coupling/houseYear/spaces.ts';
import type { LoadsResult } from '../loads/result.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { iceShare } from './kernels/frost.ts';
import { slopeLeast } from './kernels/slope.ts';
import type { Drain, Place, Stretch, Winter } from './result.ts';

/** Pipe wall, m. Source: `condensate.room`. */
export const wall = 0.003;
/** Films over a bare pipe in still attic air, W/(m²K), and °C of water that stands in a trap. Source: `condensate.frost`. */
const film = 8;
export const standing = 5;

/** A pipe of the drain as cold air meets it. */
export const coldPipe = (inner: number, insulation: number) => ({ inner, outer: inner + 2 * wall, insulation, film });

/** How the place freezes through the house's own year; undefined inside, and as long as the year is not known. */
export function frostsAt(place: Place, { year }: LoadsResult): Frosts | undefined {
  if (!year.ok || place === 'inside') return undefined;
  const { attic, below, outdoor } = year.value.frosts;
  return place === 'attic' ? attic : place === 'below' ? below : outdoor;
}

/** A winter at one place, and how much of water that stood in such a pipe turned to ice in its hardest stretch. */
export function winterOf(frosts: Frosts, inner: number, insulation: number): Winter {
  const pipe = coldPipe(inner, insulation);
  const ice = frosts.hardest.reduce((most, f) => Math.max(most, iceShare(pipe, f.kelvinHours)), 0);
  const { hours, longest, lowest, hardest } = frosts;
  return { hours, longest, lowest, ice, ...(hardest[0] ? { from: hardest[0].from } : {}) };
}

/** The drain in stretches from the trap to its end; where none are entered it is one. */
export function stretchesOf(drain: Drain, loads: LoadsResult, s: Scenario): readonly Stretch[] {
  const size = s.of(drain.size);
  const one = (id: string, name: string, of: Pick<Drain, 'place' | 'run' | 'fall' | 'insulation'>): Stretch => {
    const [run, fall, place, foam] = [s.of(of.run), s.of(of.fall), s.choice(of.place), s.of(of.insulation)];
    if (!(run > 0)) return unresolved('missing', of.run.path);
    const least = run * slopeLeast;
    const frosts = frostsAt(place, loads);
    return {
      id,
      name,
      place,
      run,
      fall,
      least,
      // Rounded like every limit: a fall that is just the least counts as one.
      falls: fall >= least * (1 - 1e-9),
      foam,
      ...(frosts ? { winter: winterOf(frosts, size, foam) } : {}),
    };
  };
  const entered = inOrder(drain.stretches);
  if (entered.length === 0) return [one('', 'The drain', drain)];
  return entered.map(([id, of]) => one(id, of.name ?? id, of));
}
