import { bladeLosses } from '../../physics/flow/index.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import { inTable, nominalAir, solveFlows } from '../flows.ts';
import type { BalancedFlows } from './balanceFlows.ts';
import { dampered } from './dampered.ts';
import { type DamperPlace, damperPlaces } from './places.ts';
import type { AirBalance, Season, SeasonBalance } from './result.ts';
import { seasonBalance } from './seasonBalance.ts';
import type { Shares } from './sharesOf.ts';
import { withinTable } from './withinTable.ts';

export type BalanceInput = {
  readonly model: AirModel;
  /** Loss coefficient of the dampers that are drawn already, by section. */
  readonly drawn: Readonly<Record<string, number>>;
  /** What part of the air each room with a register is to get. */
  readonly shares: Readonly<Record<Season, Outcome<Shares>>>;
  readonly governs: Season;
};

/**
 * Damper settings for both seasons, with room-temperature air. A damper that is drawn into a collar is taken as the one
 * to set, wherever it stands. Where balancing would take the blower below its table, rooms that are short come as far as
 * it lets them. Ends the enclosing attempt where no register blows or
 * the flows do not settle. Sources: `air.balance`, `flow.fittings`.
 */
export function balanceAir({ model, drawn, shares, governs }: BalanceInput): AirBalance {
  const places = damperPlaces(model);
  if (places.length === 0) return unresolved('missing', 'routes.ducts.terminals');
  const bare = withoutDampers(model, places, drawn);
  const flowsIn = (m: AirModel): AirFlows => inTable(solveFlows(m, nominalAir), model);
  const open = flowsIn(dampered(bare, places, new Map(places.map((p) => [p.id, bladeLosses.open]))));
  const find = (season: Season) => attempt(() => withinTable(bare, places, required(shares[season]), open));
  const both = { heating: find('heating'), cooling: find('cooling') };
  const chosen = both[governs];
  const states = { drawn: flowsIn(model), open, ...(chosen.ok ? { asSet: chosen.value.flows } : {}) };
  const season = (id: Season): Outcome<SeasonBalance> =>
    attempt(() => seasonBalance(id, required(both[id]), required(shares[id]), places, states));
  return {
    governs,
    heating: season('heating'),
    cooling: season('cooling'),
    openFlow: open.flow,
    ...(chosen.ok ? { set: dampered(bare, places, lossesOf(places, chosen.value)) } : {}),
  };
}

const lossesOf = (places: readonly DamperPlace[], found: BalancedFlows): Map<string, number> =>
  new Map(places.map((p) => [p.id, found.losses[p.room] ?? bladeLosses.open]));

/** The ducts without the dampers that are drawn into the collars. */
function withoutDampers(model: AirModel, places: readonly DamperPlace[], drawn: BalanceInput['drawn']): AirModel {
  const collars = new Set(places.flatMap((p) => (p.at === 'collar' ? [p.id] : [])));
  return {
    ...model,
    sections: model.sections.map((x) =>
      collars.has(x.id) ? { ...x, lossCoefficient: Math.max(0, x.lossCoefficient - (drawn[x.id] ?? 0)) } : x,
    ),
  };
}
