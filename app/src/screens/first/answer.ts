import type { Finding, Plan, Spread } from '@kneewall/engine';
import { worstFirst } from '@kneewall/engine';

/** The electrical gates: a unit that fails one cannot run here, whatever else is right. */
const gates = /^equipment\/(voltage|phases|frequency|inverter|strips)/;

/** What the first answers already say. A part that no trade reaches yet is absent. */
export type FirstAnswer = {
  readonly heating?: Spread;
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

export function firstAnswer(plan: Plan): FirstAnswer {
  const { loads, climate, equipment } = plan.trades;
  const heating = loads?.heating;
  const cooling = loads?.cooling;
  const gateFindings = plan.findings.filter((f) => gates.test(f.id));
  const stops = plan.findings.filter(
    (f) => f.status === 'fails' && (gates.test(f.id) || (f.holdPoint === 'decide' && f.consequence === 'harm')),
  );
  return {
    ...(heating?.ok ? { heating: heating.value } : {}),
    ...(cooling?.ok ? { cooling: cooling.value.sensible } : {}),
    ...(climate?.night.ok ? { night: climate.night.value.outdoor.likely } : {}),
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
