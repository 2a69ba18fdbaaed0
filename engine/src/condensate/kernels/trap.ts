import { inch } from '../../physics/exact.ts';
import type { Recorder } from '../../physics/recorder.ts';

/** Pa that an inch of water stands for. Source: `condensate.trap`. */
export const inchOfWater = 249.089;

/**
 * A trap, m: `drop` from the underside of the cabinet's outlet to that of the trap's own, `seal` of water from there to
 * the upper side of the lowest pipe, where air would slip through, and `room` of both; the pipe itself comes on top.
 */
export type Trap = { readonly drop: number; readonly seal: number; readonly room: number };

/**
 * The trap of a cabinet under suction of `suction` Pa at its most: an inch of water more than the suction as drop, half
 * of that as seal. Source: `condensate.trap`.
 */
export function trapUnderSuction(suction: number, rec?: Recorder): Trap {
  const drop = inch * (suction / inchOfWater + 1);
  const seal = drop / 2;
  rec?.step('H', '0.0254 * (p / 249.089 + 1)', { p: suction }, drop, 'm', 'condensate.trap');
  rec?.step('J', 'H / 2', { H: drop }, seal, 'm', 'condensate.trap');
  return { drop, seal, room: drop + seal };
}

/**
 * The trap of a cabinet that is blown up with `pressure` Pa: a seal of that and half an inch, the outlet half an inch
 * below the pan. Source: `condensate.trap-pressed`.
 */
export function trapUnderPressure(pressure: number, rec?: Recorder): Trap {
  const drop = inch / 2;
  const seal = inch * (pressure / inchOfWater + 0.5);
  rec?.step('H', '0.0254 / 2', {}, drop, 'm', 'condensate.trap-pressed');
  rec?.step('J', '0.0254 * (p / 249.089 + 0.5)', { p: pressure }, seal, 'm', 'condensate.trap-pressed');
  return { drop, seal, room: drop + seal };
}

/** m of water that suction or pressure of so many Pa holds up. */
export const columnOf = (pressure: number): number => (inch * pressure) / inchOfWater;

/** Pa of suction that a seal of `seal` m holds at start, when no water comes yet: both legs' water stands in one. */
export const sealHolds = (seal: number): number => (2 * seal * inchOfWater) / inch;
