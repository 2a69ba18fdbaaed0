import { unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';
import type { Visit } from './result.ts';

/** h from evening to morning for which a battery carries a house. Common practice, no source: `commissioning.night`. */
const nightHours = 10;
/** Shares of a battery that are used where the project does not say. */
const usable = { 'lithium-iron-phosphate': 0.9, 'lead-acid': 0.5, other: 0.8 } as const;

/** A power reading: explained, suspicious, or not to be told from the protocol, and what it means overnight. */
export function powerFinding({ id, name, found }: Visit, holdPoint: 'start' | 'season', view: PlanView): Found[] {
  if (!found.ok || !found.value.power) return [];
  const { power } = found.value;
  const hours = batteryHours(view, power.read);
  const told = telling('commissioning', id)(
    {
      id: `power:${id}`,
      holdPoint,
      consequence: 'money',
      kind: 'electric-power',
      limit: { max: power.most },
      source: 'commissioning.base',
      facts: {
        name,
        verdict: power.verdict,
        reasons: power.reasons.map((reason) => ({ reason })),
        read: power.read,
        expected: power.expected,
        gap: power.gap,
        night: (power.read * nightHours) / 1000,
        should: (power.expected * nightHours) / 1000,
        ...(hours === undefined ? {} : { hours, wouldBe: hours * (power.read / power.expected) }),
      },
    },
    (rec) => {
      if (power.verdict === 'cannot tell')
        return unresolved('missing', `visits.${id}.houseBase`, `visits.${id}.strips`);
      rec.step('P_net', 'table', {}, power.net, 'W', 'project');
      return power.net;
    },
  );
  return [told];
}

/** h for which a full battery carries that draw; undefined on the grid or without a battery. */
function batteryHours({ project }: PlanView, watts: number): number | undefined {
  const { power } = project;
  const s = scenario();
  if (s.choice(power.supply) !== 'own' || watts <= 0) return undefined;
  const energy = s.maybe(power.battery.energy);
  const share = s.maybe(power.battery.usable) ?? usable[s.choice(power.battery.chemistry)];
  return energy === undefined ? undefined : (1000 * energy * share) / watts;
}
