import { specificVolume, wetBulb } from '../../physics/air/index.ts';
import { type AirState, bypassAt, heatGivenUp, leavingAir } from './bypass.ts';
import type { Coil } from './fit.ts';

export type CoilAt = {
  readonly entering: AirState;
  /** m³/s actual, entering. */
  readonly flow: number;
  /** Pa */
  readonly pressure: number;
  /** W that the compressor gives with the coil at its rated surface: the sheet's, corrected for altitude. */
  readonly capacity: number;
  /** Share of that for each K the surface is warmer. */
  readonly slope: number;
};

export type CoilOutput = {
  readonly sensible: number;
  readonly latent: number;
  /** °C */
  readonly surface: number;
  readonly bypass: number;
};

/** Beyond these a sheet's row says nothing: share of its flow, K from its wet bulb. Source: `equipment.coil-reach`. */
const flowLeast = 0.5;
const flowMost = 1.5;
const wetBulbReach = 8;

/** kg/s of dry air in a flow. */
export const dryAirFlow = ({ entering, flow, pressure }: Pick<CoilAt, 'entering' | 'flow' | 'pressure'>): number =>
  flow / specificVolume(entering.t, entering.w, pressure);

/** Whether the row the coil was fitted to reaches that far. */
export function withinReach(coil: Coil, at: CoilAt): boolean {
  const share = dryAirFlow(at) / coil.massFlow;
  const bulb = wetBulb(at.entering.t, at.entering.w, at.pressure);
  return share >= flowLeast && share <= flowMost && Math.abs(bulb - coil.wetBulb) <= wetBulbReach;
}

/**
 * What a coil takes from air other than that of its rating: its surface settles where the air gives up what the
 * compressor takes. A surface above the entering dew point stays dry: sensible heat only, on the dry line. Undefined
 * beyond its row's reach, and where the surface would ice over (below 0 °C). Source: `equipment.coil`.
 */
export function coilOutput(coil: Coil, at: CoilAt): CoilOutput | undefined {
  if (!withinReach(coil, at)) return undefined;
  const massFlow = dryAirFlow(at);
  const bypass = bypassAt(coil.conductance, massFlow);
  const given = (surface: number) =>
    heatGivenUp(at.entering, leavingAir(at.entering, surface, bypass, at.pressure), massFlow);
  const spare = (surface: number): number => {
    const { sensible, latent } = given(surface);
    return sensible + latent - at.capacity * (1 + at.slope * (surface - coil.surface));
  };
  // Wet or dry is one curve: air gives up less the warmer the surface, the compressor takes more.
  if (spare(0) < 0) return undefined;
  const surface = halved((x) => spare(x) > 0, at.entering.t);
  return { ...given(surface), surface, bypass };
}

/**
 * Latent heat that comes with just as much sensible heat as the rooms need, the compressor turned down and the air as
 * it flows: W. Nothing where the surface stays above the entering dew point; undefined where even an ice-cold surface
 * gives less than that.
 */
export function latentWith(coil: Coil, sensible: number, at: Omit<CoilAt, 'capacity' | 'slope'>): number | undefined {
  const massFlow = dryAirFlow(at);
  const bypass = bypassAt(coil.conductance, massFlow);
  const given = (surface: number) =>
    heatGivenUp(at.entering, leavingAir(at.entering, surface, bypass, at.pressure), massFlow);
  if (given(0).sensible < sensible) return undefined;
  return given(halved((surface) => given(surface).sensible > sensible, at.entering.t)).latent;
}

/** Where a condition stops holding between 0 °C and a temperature. */
function halved(holds: (surface: number) => boolean, most: number): number {
  let [low, high] = [0, most];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
