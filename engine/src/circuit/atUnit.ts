import type { Noted } from '../plan/noting.ts';
import { type Outcome, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { gaugeIn } from './conductor.ts';
import type { Conductor, Rating, Run } from './result.ts';
import type { RunInput } from './runInput.ts';
import { gaugeArea } from './wires/gauges.ts';
import { groundingGauge } from './wires/grounding.ts';
import { disconnectLeast, disconnectSize } from './wires/protection.ts';
import type { Metal } from './wires/tables.ts';

type Grounded = {
  readonly metal: Metal;
  readonly conductor: Outcome<Conductor>;
  readonly thinnest: Outcome<number>;
  readonly protection: Run['protection'];
};

/** The ground that a run needs: by its protection, grown with its conductors, never thicker than they are. */
export function groundOf(
  { ground: own }: RunInput,
  { metal, conductor, thinnest, protection }: Grounded,
  noted: Noted,
): Run['ground'] {
  return noted('ground', (recorder) => {
    const phase = required(conductor);
    const { size } = required(protection);
    const enlarged = thinnest.ok ? phase.area / gaugeArea(thinnest.value) : 1;
    const n = groundingGauge(size, metal, enlarged) ?? unresolved('out-of-range', own.path);
    const area = Math.min(gaugeArea(n), phase.area);
    const source = metal === 'copper' ? 'circuit.grounding' : 'circuit.grounding-aluminium';
    recorder.step('A_needed', 'table', { I_size: size }, area, 'mm²', source);
    if (!('missing' in own)) recorder.given('A_ground', own);
    return { area, ...gaugeIn(area, metal), own: !('missing' in own) };
  });
}

/** What the disconnect has to be made for, and the one the person means to use or the next that is sold. */
export function disconnectOf({ disconnect: own }: RunInput, rating: Outcome<Rating>, noted: Noted): Run['disconnect'] {
  return noted('disconnect', (recorder) => {
    const current = required(rating).current.high;
    const least = disconnectLeast(current);
    recorder.step('I_least', '1.15 * I', { I: current }, least, 'A', 'circuit.disconnect');
    if (!('missing' in own)) {
      recorder.given('I_size', own);
      return { least, size: own.likely };
    }
    const size = disconnectSize(current) ?? unresolved('out-of-range', own.path);
    recorder.step('I_size', 'table', {}, size, 'A', 'circuit.disconnect');
    return { least, size };
  });
}

export function sightOf({ disconnectDistance }: RunInput, noted: Noted): Run['sight'] {
  return noted('disconnect-sight', (recorder) => {
    const distance = scenario().of(disconnectDistance);
    if (!('missing' in disconnectDistance)) recorder.given('L', disconnectDistance);
    return distance;
  });
}
