import type { EquipmentResult } from '../../equipment/result.ts';
import { attempt, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { TradeInput } from '../../plan/trade.ts';
import { boughtSections } from '../bought.ts';
import { drawnPieces } from '../drawnPieces.ts';
import { pendingIn } from '../pendingIn.ts';
import type { AirResult } from '../result.ts';
import { thereOf } from '../there.ts';
import { unitBehind, wantedFlow } from '../unitBehind.ts';
import { askedOf } from './asked.ts';
import { fittingsOf } from './fittingsOf.ts';
import { sizingJob } from './sizingJob.ts';

type Input = Pick<TradeInput, 'project' | 'plain'> & { readonly upstream: { readonly equipment: EquipmentResult } };

/** A design with the choice of sizes asked for: prices, stock and what is bought steer that choice; and what is there already and never bought. */
export function withSizing(result: AirResult, { project, upstream: { equipment }, plain }: Input): AirResult {
  const { ducts } = project.routes;
  const there = thereOf(project);
  const bought = boughtSections(project);
  const old = there.before.filter((id) => bought[id] === undefined);
  const { model, flows, rooms, wanted } = result;
  const sizing = attempt(() => {
    const unit = unitBehind(ducts, equipment);
    const { staticMost } = unit.blower;
    const input = {
      model: required(model),
      fittings: fittingsOf(ducts, scenario()),
      rooms: Object.fromEntries(Object.entries(rooms).map(([id, room]) => [id, required(room.wanted)])),
      flow: wantedFlow(unit, required(flows)),
      ...(staticMost === undefined ? {} : { staticMost }),
      bought,
      ...(old.length > 0 ? { there: old } : {}),
      ...askedOf(project),
    };
    return sizingJob(input, plain);
  });
  return {
    ...result,
    there,
    fittings: drawnPieces(ducts, there, scenario()),
    sizing: pendingIn(sizing),
    wanted: [...(sizing.ok ? [sizing.value] : []), ...wanted],
  };
}
