import type { Noted } from '../plan/noting.ts';
import { type Outcome, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { Conductor, Run } from './result.ts';
import type { RunInput } from './runInput.ts';
import { fillMost, insulatedArea, pipeFill, smallestPipe } from './wires/fill.ts';
import { gaugeOfArea } from './wires/gauges.ts';

/**
 * How full the conduit of a run gets: its current-carrying conductors and one ground. Others in the same conduit are
 * taken to be as thick as these, which is what is known of them. Nothing where the run lies in no conduit.
 */
export function conduitOf(
  input: RunInput,
  conductor: Outcome<Conductor>,
  ground: Run['ground'],
  noted: Noted,
): Pick<Run, 'fill'> {
  const s = scenario();
  if (s.choice(input.laid) !== 'pipe') return {};
  return {
    fill: noted('fill', (recorder) => {
      const carrying = Math.round(s.of(input.together));
      const wire = overInsulation(required(conductor).area, input.size.path);
      const earth = overInsulation(required(ground).area, input.ground.path);
      const areas = [...Array.from({ length: carrying }, () => wire), earth];
      const own = s.maybe(input.pipe);
      const picked = own === undefined ? smallestPipe(areas) : undefined;
      const pipe = own ?? picked?.diameter ?? unresolved('out-of-range', input.pipe.path);
      const shared = { wire, earth, n: carrying };
      recorder.step('A_wires', 'n * wire + earth', shared, carrying * wire + earth, 'mm²', 'circuit.fill');
      return {
        share: pipeFill(areas, pipe, recorder),
        most: fillMost(areas.length),
        count: areas.length,
        pipe,
        ...(picked ? { name: picked.name } : {}),
      };
    }),
  };
}

/** mm² over the insulation; a metric size counts as the next thicker gauge. Ends the attempt beyond the table. */
const overInsulation = (area: number, path: string): number =>
  insulatedArea(gaugeOfArea(area * 0.995)) ?? unresolved('out-of-range', path);
