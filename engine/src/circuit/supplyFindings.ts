import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { legsOf } from './ownSupply.ts';
import type { CircuitResult } from './result.ts';

/** Share of its rating that a generator should keep free. Source: `circuit.generator`. */
const generatorFree = 0.2;

/** The gate of one's own supply: the worst second, the busier leg, the generator. Nothing on the grid. */
export function supplyFindings(result: CircuitResult, view: PlanView): Draft[] {
  if (result.supply !== 'own') return [];
  const name = result.unit.ok ? result.unit.value.name : '';
  return [surge(result, view, name), ...legs(result, view, name), ...generator(result, view, name)];
}

const gate = (word: string) =>
  ({
    id: word,
    subject: 'supply',
    holdPoint: 'decide',
    consequence: 'money',
    kind: 'electric-power',
    working: `circuit/${word}`,
  }) as const;

/** A value that can be judged only against a limit that is known too. */
const against = (value: Outcome<unknown> | undefined, limit: Outcome<number>): Draft['value'] =>
  attempt(() => {
    required(limit);
    return required(value ?? { ok: false, because: 'missing', paths: ['power'] }) as number;
  });

function surge({ surge: asked }: CircuitResult, view: PlanView, name: string): Draft {
  const { inverter } = view.project.power;
  const gives = attempt(() => scenario().of(inverter.surge));
  return {
    ...gate('surge'),
    value: against(asked, gives),
    limit: gives.ok ? { max: gives.value } : {},
    source: 'circuit.surge',
    facts: { name },
  };
}

function legs({ leg, output }: CircuitResult, view: PlanView, name: string): Draft[] {
  const { power } = view.project;
  const given = legsOf(power);
  const half = attempt(() => scenario().of(power.inverter.continuous) / 2);
  const shared = { ...gate('leg'), source: 'circuit.legs', facts: { name } };
  if (given === undefined)
    return [{ ...shared, value: attempt(() => unresolved('missing', power.inverter.legs.path)), limit: {} }];
  if (given === 'low' && output) return [wrongOutput(output, name)];
  if (given !== 'two') return [];
  return [{ ...shared, value: against(leg, half), limit: half.ok ? { max: half.value } : {} }];
}

/** V that a leg gives, and how far above its plate may lie. */
const oneLeg = 120 * 1.1;

/** A unit for two legs at an inverter that has one. */
const wrongOutput = (output: Outcome<number>, name: string): Draft => ({
  ...gate('output'),
  consequence: 'damage',
  kind: 'voltage',
  value: output,
  limit: { max: oneLeg },
  source: 'circuit.legs',
  facts: { name },
});

/** What the charger may take so that a fifth of the generator stays free, W; 0 where nothing is left. */
function chargeLeft(view: PlanView, asked: number, gives: number): number {
  const charge = scenario().maybe(view.project.power.generator.charging) ?? 0;
  return Math.max(0, (1 - generatorFree) * gives - (asked - charge));
}

function generator({ generator: set }: CircuitResult, view: PlanView, name: string): Draft[] {
  if (!set) return [];
  const { asked, gives } = set;
  return [
    {
      ...gate('generator'),
      value: against(asked, gives),
      limit: gives.ok ? { max: gives.value } : {},
      ...(gives.ok ? { marginWanted: generatorFree * gives.value } : {}),
      source: 'circuit.generator',
      facts: {
        name,
        ...(asked.ok && gives.ok
          ? { left: chargeLeft(view, asked.value.likely, gives.value), gives: gives.value }
          : {}),
      },
    },
  ];
}
