import type { AgreedPoint } from '../coupling/agreement.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './findings.ts';

/** What follows once air, equipment and loads agree on the cold night. */
export function agreedFindings(view: PlanView): Found[] {
  const { heating, converged } = view.agreement;
  if (!heating) return [];
  const point: Outcome<AgreedPoint> = converged
    ? { ok: true, value: heating }
    : { ok: false, because: 'not-converged', paths: ['routes.ducts'] };
  return [atticTakes(point, view), roomsHeld(point, view)];
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

function roomsHeld(point: Outcome<AgreedPoint>, view: PlanView): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const { delivered } = required(point);
    const load = required(view.trades.loads?.heating ?? { ok: false, because: 'missing', paths: ['house'] });
    recorder.step('Q_rooms', 'solved', { residual: view.agreement.residual }, delivered, 'W', 'air.duct-heat');
    recorder.step('Q_house', 'table', {}, load.likely, 'W', 'air.holds-rooms');
    recorder.step(
      'spare',
      'Q_rooms - Q_house',
      { Q_rooms: delivered, Q_house: load.likely },
      delivered - load.likely,
      'W',
      'air.holds-rooms',
    );
    return { low: delivered - load.high, likely: delivered - load.likely, high: delivered - load.low };
  });
  return {
    draft: {
      id: 'rooms-held',
      subject: 'house',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'power',
      value,
      limit: { min: 0 },
      source: 'air.holds-rooms',
      working: 'air/rooms-held',
      facts: point.ok ? { delivered: point.value.delivered, supply: point.value.leaving } : {},
    },
    working: steps,
  };
}
