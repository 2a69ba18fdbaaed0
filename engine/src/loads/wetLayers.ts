import type { Range } from '@kneewall/project';
import type { ClimateMonth } from '../climate/result.ts';
import { type Interstitial, interstitial, type WetPlane } from '../physics/moisture/index.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working, type WorkingRecorder } from '../plan/working.ts';
import { type ColdSide, coldSides } from './coldSides.ts';
import { builtAs, filmsIn, type Setting } from './constructions/index.ts';
import { airByMonth, dampness, type RoomCase, recordAir } from './roomAir.ts';
import { coats, type NamedVapourLayer, vapourLayers } from './vapourLayers.ts';

/** Water at one plane from which it runs off what does not soak it up, kg/m². Source: `loads.wet-layers`. */
const mostWater = 0.2;

type Found = { readonly draft: Draft; readonly working: Working };
type Facts = Readonly<Record<string, number | string>>;
/** One construction through a year, in rooms that are dry and thickly painted, as usual, and damp and hardly painted. */
type Years = Readonly<Record<RoomCase, Interstitial>>;

/** Water that gathers inside the constructions between heated rooms and cold air, over an ordinary year. */
export function wetLayers(view: PlanView): Found[] {
  const { climate } = view.trades;
  if (!climate) return [];
  const s = scenario();
  return coldSides(view.project.house, s).map((side) => {
    const { recorder, steps } = recordWorking();
    const judged = attempt(() => judgeSide(side, required(climate.months), view, s, recorder));
    return {
      draft: {
        id: `wet-layers:${side.id}`,
        subject: side.id,
        holdPoint: 'close',
        consequence: 'damage',
        kind: 'areal-mass',
        value: judged.ok ? { ok: true, value: judged.value.value } : judged,
        limit: { max: judged.ok ? judged.value.limit : mostWater },
        source: 'loads.wet-layers',
        working: `loads/wet-layers:${side.id}`,
        facts: { name: side.name, layers: layersKnown(side), ...(judged.ok ? judged.value.facts : {}) },
      },
      working: steps,
    };
  });
}

/** Whether the layers are the person's own, those of the construction chosen, or those of the one nearest to its U. */
function layersKnown(side: ColdSide): string {
  const { assembly, kind } = side;
  if (Object.keys(assembly.layers).length > 0) return coats(side, 'likely').length > 0 ? 'entered' : 'with-paint';
  return builtAs(assembly, kind, false)?.by ?? 'assumed';
}

type Judgement = { readonly value: Range; readonly limit: number; readonly facts: Facts };

function judgeSide(
  side: ColdSide,
  months: readonly ClimateMonth[],
  view: PlanView,
  s: Scenario,
  rec: WorkingRecorder,
): Judgement {
  const layers = vapourLayers(side, s, rec);
  const { setpoints } = view.project.house;
  const as = (damp: RoomCase): readonly NamedVapourLayer[] => [...coats(side, damp, rec), ...layers];
  const cases = { low: as('low'), high: as('high'), likely: as('likely') };
  const through = (setting: Setting, damp: RoomCase): Interstitial =>
    interstitial(cases[damp], filmsIn(setting), airByMonth(setpoints, months, dampness[damp], s));
  // Where it stands in several ways the wettest one counts.
  const years = side.settings
    .map(
      (setting): Years => ({
        low: through(setting, 'low'),
        likely: through(setting, 'likely'),
        high: through(setting, 'high'),
      }),
    )
    .reduce((a, b) => (wetter(b.likely, a.likely) ? b : a));
  const statement = statementOf(years);
  const air = airByMonth(setpoints, months, dampness.likely, s)[years.likely.start ?? coldest(months)];
  if (air) recordAir(air, rec);
  recordYear(years.likely, statement.says, rec);
  return { ...statement, facts: { ...factsOf(years, cases.likely), says: statement.says } };
}

const wetter = (a: Interstitial, b: Interstitial): boolean => a.left > b.left || (a.left === b.left && a.most > b.most);

const coldest = (months: readonly ClimateMonth[]): number =>
  months.reduce((best, m, i) => (m.mean < (months[best]?.mean ?? 0) ? i : best), 0);

type Statement = { readonly says: 'most' | 'left'; readonly value: Range; readonly limit: number };

/**
 * What decides: water still there after a year in usual rooms, then too much at once in usual rooms, then water left
 * in damp rooms. Water left may not be at all; water that dries may be up to the limit.
 */
function statementOf({ low, likely, high }: Years): Statement {
  const says = likely.left > 0 || (likely.most <= mostWater && high.left > 0) ? 'left' : 'most';
  const value = { low: low[says], likely: likely[says], high: high[says] };
  return { says, value, limit: says === 'left' ? 0 : mostWater };
}

function recordYear(year: Interstitial, says: Statement['says'], rec: WorkingRecorder): void {
  const { entered, leaving, left, most } = year;
  const residual = entered - leaving - left;
  const unit = 'kg/m²';
  const rest = { entered, leaving, residual };
  if (says === 'left') rec.step('left', 'solved', rest, left, unit, 'iso-13788.interstitial');
  else rec.step('most', 'solved', { ...rest, left }, most, unit, 'iso-13788.interstitial');
}

/** Where and when the water gathers first; in damp rooms where it does not in usual ones. */
function factsOf({ likely, high }: Years, layers: readonly NamedVapourLayer[]): Facts {
  const year = likely.start === undefined ? high : likely;
  const wettest = year.planes.reduce<WetPlane | undefined>(
    (a, b) => (a && Math.max(...a.held) >= Math.max(...b.held) ? a : b),
    undefined,
  );
  if (!wettest || year.start === undefined) return { most: 0 };
  const [inner, outer] = [layers[wettest.layer]?.name, layers[wettest.layer + 1]?.name];
  return {
    most: year.most,
    month: year.start + 1,
    inner: inner ?? '',
    outer: wettest.share < 1 ? (inner ?? '') : (outer ?? ''),
  };
}
