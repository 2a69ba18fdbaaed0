import type { AgreedPoint } from '../coupling/agreement.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './found.ts';
import type { AirResult } from './result.ts';
import { roomsCooled, roomsHeld, roomsReached } from './roomsReached.ts';

/** What follows once air, equipment and loads agree on the cold night and the hot hour. */
export function agreedFindings({ model }: Pick<AirResult, 'model'>, view: PlanView): Found[] {
  const { heating, cooling, converged } = view.agreement;
  const settled = (point: AgreedPoint): Outcome<AgreedPoint> =>
    converged ? { ok: true, value: point } : { ok: false, because: 'not-converged', paths: ['routes.ducts'] };
  return [
    ...(heating ? [atticTakes(settled(heating), view), roomsReached(settled(heating), model, view, roomsHeld)] : []),
    ...(cooling ? [roomsReached(settled(cooling), model, view, roomsCooled)] : []),
  ];
}

function atticTakes(point: Outcome<AgreedPoint>, view: PlanView): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const p = required(point);
    const lost = (p.sensible - p.delivered) / p.sensible;
    recorder.step('Q_unit', 'solved', { residual: view.agreement.residual }, p.sensible, 'W', 'air.duct-heat');
    recorder.step('Q_rooms', 'solved', { residual: view.agreement.residual }, p.delivered, 'W', 'air.duct-heat');
    recorder.step(
      'share',
      '(Q_unit - Q_rooms) / Q_unit',
      { Q_unit: p.sensible, Q_rooms: p.delivered },
      lost,
      '',
      'air.attic-takes',
    );
    return lost;
  });
  return {
    draft: {
      id: 'duct-heat',
      subject: 'ducts',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'fraction',
      value,
      limit: { max: 0.15 },
      source: 'air.attic-takes',
      working: 'air/duct-heat',
      facts: point.ok ? { lost: point.value.sensible - point.value.delivered, attic: point.value.attic } : {},
    },
    working: steps,
  };
}
