import type { Narrowed } from '../loads/result.ts';
import type { Finding, Status } from '../plan/finding.ts';
import { worstFirst } from '../plan/holdPoints.ts';
import type { Plan } from '../plan/plan.ts';
import type { Spread } from '../plan/scenario.ts';

/** The electrical gates: a unit that fails one cannot run here, whatever else is right. */
const gates = /^equipment\/(voltage|phases|frequency|inverter|strips)/;

/** What the first answers already say. A part that no trade reaches yet is absent. */
export type FirstAnswer = {
  /** Whether rooms carry the sums by now, or the first answers alone. */
  readonly basis?: 'rooms' | 'quick';
  /** That the rooms entered so far are not the house, in words. */
  readonly partly?: string;
  /** W on the cold night; narrowed by last winter's fuel where `winter` says so. */
  readonly heating?: Spread;
  /** Last winter's fuel beside the house as entered, W each; only where fuel is known. */
  readonly winter?: FirstWinter;
  /** W that sums of steady parts say, where the house's own walls, hour by hour, have taken their place. */
  readonly sums?: number;
  readonly cooling?: Spread;
  /** °C on the cold night. */
  readonly night?: number;
  /** Document paths without which the heat need cannot be said. */
  readonly missing: readonly string[];
  /** Units entered, and whether each holds the cold night alone. */
  readonly units: readonly { readonly id: string; readonly name: string; readonly spare?: Spread }[];
  readonly stops: readonly Finding[];
  /** Some gate was checked, so that "nothing stops it" may be said. */
  readonly gatesChecked: boolean;
  readonly change?: Finding;
};

/** The two witnesses of the heat need, and what came of hearing both. */
export type FirstWinter = {
  readonly verdict: Narrowed['verdict'];
  readonly house: Spread;
  readonly fuel: Spread;
};

/** A unit's standing on the cold night. */
export const unitStatus = ({ spare }: FirstAnswer['units'][number]): Status =>
  !spare ? 'unknown' : spare.low >= 0 ? 'ok' : spare.likely >= 0 ? 'tight' : 'fails';

/** Reads the first answer off a plan; computes nothing new. */
export function firstAnswer(plan: Plan): FirstAnswer {
  const { loads, climate, equipment } = plan.trades;
  const heating = loads?.heating;
  const narrowed = loads?.narrowed;
  const cooling = loads?.cooling;
  const gateFindings = plan.findings.filter((f) => gates.test(f.id));
  const stops = plan.findings.filter(
    (f) => f.status === 'fails' && (gates.test(f.id) || (f.holdPoint === 'decide' && f.consequence === 'harm')),
  );
  const cover = plan.findings.find((f) => f.id === 'loads/rooms-cover' && f.status === 'fails');
  return {
    ...(cover ? { partly: cover.what } : {}),
    ...(heating?.ok ? { heating: narrowed?.ok ? narrowed.value.heating : heating.value } : {}),
    ...(heating?.ok && narrowed?.ok
      ? { winter: { verdict: narrowed.value.verdict, house: heating.value, fuel: narrowed.value.fuel.heating } }
      : {}),
    ...(cooling?.ok ? { cooling: cooling.value.sensible } : {}),
    ...(climate?.night.ok ? { night: climate.night.value.outdoor.likely } : {}),
    ...(loads ? { basis: loads.basis } : {}),
    ...(loads?.sums?.ok ? { sums: loads.sums.value.heating } : {}),
    missing: heating && !heating.ok ? heating.paths : [],
    units: Object.values(equipment?.candidates ?? {}).map(({ id, name, heatingSpare }) => ({
      id,
      name,
      ...(heatingSpare.ok ? { spare: heatingSpare.value } : {}),
    })),
    stops: stops.toSorted(worstFirst),
    gatesChecked: gateFindings.some((f) => f.status === 'ok'),
    ...changeFrom(plan),
  };
}

/** The one thing to change: the worst that already fails and can be mended before anything is bought. */
function changeFrom(plan: Plan): { change?: Finding } {
  const early = plan.findings.filter(
    (f) => (f.holdPoint === 'decide' || f.holdPoint === 'order') && (f.status === 'fails' || f.status === 'tight'),
  );
  const whole = early.filter((f) => f.trade === 'loads').toSorted(worstFirst)[0] ?? early.toSorted(worstFirst)[0];
  const change = whole ?? plan.findings.find((f) => f.id === 'loads/largest-part');
  return change ? { change } : {};
}
