/** A pump and its tube: m that it lifts at no flow, m³/s at no lift, m of lift, m inside, m long. */
export type Lifted = {
  readonly headMost: number;
  readonly flowMost: number;
  readonly lift: number;
  readonly tube: number;
  readonly tubeRun: number;
};

/** kg/m³, Pa s of cold water, m/s². */
const water = { density: 1000, viscosity: 1.3e-3 } as const;
const gravity = 9.80665;
/** Reynolds number up to which a tube's loss is laminar. Source: `condensate.pump`. */
const laminarMost = 2300;

/** m of head for each m³/s through a tube in slow flow (Hagen and Poiseuille). Source: `condensate.pump`. */
export const tubeHead = (tube: number, run: number): number =>
  (128 * water.viscosity * run) / (Math.PI * water.density * gravity * tube ** 4);

/**
 * m³/s that a pump lifts: its sheet's two ends joined by a straight line, below which no real pump's bowed curve lies,
 * less the tube's slow-flow loss. 0 where the lift is beyond it. Source: `condensate.pump`.
 */
export function pumpedFlow({ headMost, flowMost, lift, tube, tubeRun }: Lifted): number {
  if (!(lift < headMost) || !(flowMost > 0)) return 0;
  return (headMost - lift) / (headMost / flowMost + tubeHead(tube, tubeRun));
}

/** Whether water runs through a tube of so many m as slowly as `tubeHead` takes it to. */
export const slowFlow = (flow: number, tube: number): boolean =>
  (4 * flow * water.density) / (Math.PI * tube * water.viscosity) <= laminarMost;
