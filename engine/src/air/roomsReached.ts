import type { Given, Range } from '@kneewall/project';
import type { AgreedPoint } from '../coupling/agreement.ts';
import { airDensity } from '../physics/air/index.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import { leakageFlow } from '../physics/infiltration/index.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { AirModel } from './ductwork.ts';
import type { Found } from './found.ts';

/** One season's question: what reaches the rooms against what they need, and the wind of that hour. */
type Season = {
  readonly id: string;
  readonly consequence: 'damage' | 'comfort';
  readonly source: string;
  readonly load: (trades: PlanView['trades']) => Range;
  readonly wind: (trades: PlanView['trades']) => Given;
};

const missing = { ok: false, because: 'missing', paths: ['house'] } as const;

export const roomsHeld: Season = {
  id: 'rooms-held',
  consequence: 'damage',
  source: 'air.holds-rooms',
  load: ({ loads }) => required(loads?.heating ?? missing),
  wind: ({ climate }) => required(climate?.night ?? missing).wind,
};

export const roomsCooled: Season = {
  id: 'rooms-cooled',
  consequence: 'comfort',
  source: 'air.cools-rooms',
  load: ({ loads }) => required(loads?.cooling ?? missing).sensible,
  wind: ({ climate }) => required(climate?.day ?? missing).wind,
};

/** kg/s that supply leaks lose outside the rooms beyond what return leaks bring back: the rooms draw it from outdoors. */
function drawnBy(point: AgreedPoint, { sections }: AirModel, pressure: number): number {
  const lost = sections.reduce((sum, x) => {
    const leak = x.place === 'inside' ? 0 : (point.sections[x.id] ?? 0) * x.leakage;
    return sum + (x.side === 'supply' ? leak : -leak);
  }, 0);
  return Math.max(0, lost) * airDensity(point.entering, pressure);
}

/** What the unit brings to the rooms, less what they need and what leaking ducts make them draw from outdoors, W. */
export function roomsReached(
  point: Outcome<AgreedPoint>,
  model: Outcome<AirModel>,
  view: PlanView,
  season: Season,
): Found {
  const { recorder, steps } = recordWorking();
  const { trades, agreement } = view;
  const value = attempt(() => {
    const p = required(point);
    const { delivered, mode, outdoor, indoor } = p;
    const load = season.load(trades);
    const pressure = required(trades.climate?.pressure ?? missing);
    const drawn = drawnBy(p, required(model), pressure);
    const wind = scenario().of(season.wind(trades));
    const leak = leakageFlow(required(trades.loads?.leakage ?? missing), outdoor - indoor, wind);
    const by = leak * airDensity(outdoor, pressure);
    const degrees = mode === 'heating' ? indoor - outdoor : outdoor - indoor;
    const more = heatOfAir * (Math.sqrt(by ** 2 + drawn ** 2) - by) * Math.max(0, degrees);
    const { residual } = agreement;
    recorder.step('Q_rooms', 'solved', { residual }, delivered, 'W', 'air.duct-heat');
    recorder.step('Q_house', 'table', {}, load.likely, 'W', season.source);
    const inputs = { c_p: heatOfAir, m_leak: by, m_drawn: drawn, dT: degrees };
    const formula = 'c_p * (sqrt(m_leak ^ 2 + m_drawn ^ 2) - m_leak) * max(0, dT)';
    recorder.step('Q_drawn', formula, inputs, more, 'W', 'coupling.fan-and-weather');
    const likely = delivered - load.likely - more;
    const terms = { Q_rooms: delivered, Q_house: load.likely, Q_drawn: more };
    recorder.step('spare', 'Q_rooms - Q_house - Q_drawn', terms, likely, 'W', season.source);
    return { low: delivered - load.high - more, likely, high: delivered - load.low - more };
  });
  return {
    draft: {
      id: season.id,
      subject: 'house',
      holdPoint: 'order',
      consequence: season.consequence,
      kind: 'power',
      value,
      limit: { min: 0 },
      source: season.source,
      working: `air/${season.id}`,
      facts: point.ok ? { delivered: point.value.delivered, supply: point.value.leaving } : {},
    },
    working: steps,
  };
}
