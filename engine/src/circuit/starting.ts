import type { Range } from '@kneewall/project';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { dropOf, type Line } from './conductor.ts';
import type { Electrics } from './rating.ts';
import { eachEnd } from './rating.ts';
import type { Conductor } from './result.ts';
import { softStartLeaves } from './wires/ownSupply.ts';

/** A that flow in the first second of a compressor that does not ramp up. Ends the attempt where it is not known. */
export function startCurrent({ starts, startCurrent: given }: Electrics): Range {
  const s = scenario();
  s.of(given);
  const entered = 'missing' in given ? { low: 0, likely: 0, high: 0 } : given;
  return eachEnd((end) => entered[end] * (s.choice(starts) === 'soft' ? softStartLeaves[end] : 1));
}

/** Whether a compressor takes more in its first second than ever after. */
export const startsHard = ({ starts }: Electrics): boolean => scenario().choice(starts) !== 'ramps';

/**
 * The share of the voltage that the wires leave the unit while its compressor starts; nothing where it ramps up. What
 * panel, inverter and feeder lose on top is not known here.
 */
export function startingShare(
  electrics: Electrics,
  conductor: Outcome<Conductor>,
  length: Outcome<Range>,
  line: Line,
  workings: Record<string, Working>,
): { starting?: Outcome<Range> } {
  if (!startsHard(electrics)) return {};
  const { recorder, steps } = recordWorking();
  const starting = attempt(() => {
    const { share } = dropOf(required(conductor).area, line, startCurrent(electrics), required(length), recorder);
    const left = { low: 1 - share.high, likely: 1 - share.likely, high: 1 - share.low };
    recorder.step('left', '1 - share', { share: share.likely }, left.likely, '', 'circuit.starting');
    return left;
  });
  workings['circuit/starting:outdoor'] = steps;
  return { starting };
}
