import type { EquipmentResult } from '../equipment/result.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working } from '../plan/working.ts';
import { betweenOf } from './between.ts';
import { ownSupply } from './ownSupply.ts';
import type { CircuitResult } from './result.ts';
import { runOf } from './runs.ts';

/** Wires, protection and supply for the unit that the plan is made for. Pure. */
export function design({ project, upstream }: TradeInput<'climate' | 'loads' | 'equipment'>): CircuitResult {
  const s = scenario();
  const workings: Record<string, Working> = {};
  const supply = s.choice(project.power.supply);
  const voltage = s.of(project.power.voltage);
  const unit = attempt(() => unitOf(upstream.equipment));
  const electrics = unit.ok ? project.candidates[unit.value.id]?.electrics : undefined;
  const { wires } = project.routes;
  const dropMost = s.of(wires.dropMost);
  if (!electrics) return { supply, voltage, dropMost, unit, runs: [], workings, wanted: [] };
  const about = {
    electrics,
    line: { voltage, phases: s.choice(electrics.phases) },
    dropMost,
    upstream,
  };
  const handlerHasOwn = s.choice(electrics.handler.fed) === 'own';
  return {
    supply,
    voltage,
    dropMost,
    unit,
    runs: [
      runOf('outdoor', wires.outdoor, about, workings),
      ...(handlerHasOwn ? [runOf('handler', wires.handler, about, workings)] : []),
    ],
    between: betweenOf(electrics, wires.between),
    ...(supply === 'own' ? ownSupply(electrics, project, workings) : {}),
    workings,
    wanted: [],
  };
}

function unitOf({ chosen, candidates }: EquipmentResult): { id: string; name: string } {
  const id = required(chosen);
  return { id, name: candidates[id]?.name ?? unresolved('missing', `candidates.${id}`) };
}
