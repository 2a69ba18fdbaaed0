import { type Job, makeJob } from '../../jobs/job.ts';
import type { LoadsResult } from '../../loads/result.ts';
import type { AirModel } from '../ductwork.ts';
import { type Fitting, lossIn } from '../sizing/fittingLoss.ts';
import type { BalanceInput } from './balanceAir.ts';
import { damperPlaces } from './places.ts';
import { governingSeason, sharesOf } from './sharesOf.ts';

export const balanceKind = 'air/balance';
export const balanceVersion = 1;

/** Damper settings for both seasons: a few dozen solves of the whole network, too many for every keystroke. */
export const balanceJob = (input: BalanceInput): Job => makeJob(balanceKind, balanceVersion, input, 'short');

/** What balancing needs of a project's ducts and loads. */
export function balanceInput(
  model: AirModel,
  fittings: Readonly<Record<string, readonly Fitting[]>>,
  loads: LoadsResult,
): BalanceInput {
  const rooms = [...new Set(damperPlaces(model).map((p) => p.room))];
  const drawn = model.sections.flatMap((x) => {
    const dampers = (fittings[x.id] ?? []).filter((f) => f.kind === 'damper');
    return dampers.length > 0 ? [[x.id, lossIn(x.kind, dampers)] as const] : [];
  });
  return {
    model,
    drawn: Object.fromEntries(drawn),
    shares: { heating: sharesOf(loads, rooms, 'heating'), cooling: sharesOf(loads, rooms, 'cooling') },
    governs: governingSeason(loads),
  };
}
