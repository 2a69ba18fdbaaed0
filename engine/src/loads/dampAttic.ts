import type { ClimateMonth } from '../climate/result.ts';
import { airDensity } from '../physics/air/index.ts';
import { atticVapour, deckTemperature, solAirRise, steadyAttic } from '../physics/attic/index.ts';
import { insideFilm, outsideFilm } from '../physics/conduction/index.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import { leakageFlow } from '../physics/infiltration/index.ts';
import { type MonthAir, magnusPressure } from '../physics/moisture/index.ts';
import type { Recorder } from '../physics/recorder.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { ceilingLeak } from './ceilingLeak.ts';
import { sunFilm } from './outside.ts';
import type { LoadsResult } from './result.ts';
import { airByMonth, dampness, type RoomCase, recordAir } from './roomAir.ts';

/** What the sky takes off a roof in the mean of a month: 5 W/(m²K) × 11 K × 0.04 m²K/W. Source: `loads.month-sky`. */
const monthSky = 2.2;
const film = insideFilm.up;
/** Humidity of air in which wood settles at about 20 % water. Source: `loads.damp-attic`. */
const most = 0.9;

/** The air at the roof deck in the worst month, from a dry house under a tight ceiling to a damp one under a leaky one. */
export function dampAttic(result: LoadsResult, view: PlanView): { draft: Draft; working: Working }[] {
  const { climate } = view.trades;
  if (!result.attic.ok || !climate) return [];
  const { recorder, steps } = recordWorking();
  const s = scenario();
  let month = 0;
  const value = attempt(() => {
    const months = required(climate.months);
    const year = (room: RoomCase, rec?: Recorder): { month: number; humidity: number } =>
      worstMonth(deckOf(result, view, required(climate.pressure), room, s), months, view, room, s, rec);
    const [low, likely, high] = [year('low'), year('likely', recorder), year('high')];
    month = likely.month;
    return { low: low.humidity, likely: likely.humidity, high: high.humidity };
  });
  return [
    {
      draft: {
        id: 'damp-attic',
        subject: 'attic',
        holdPoint: 'close',
        consequence: 'damage',
        kind: 'fraction',
        value,
        limit: { max: most },
        source: 'loads.damp-attic',
        working: 'loads/damp-attic',
        facts: { month, ...ceilingLeak },
      },
      working: steps,
    },
  ];
}

type DeckMonth = (climate: ClimateMonth, air: MonthAir, rec?: Recorder) => number;

function worstMonth(
  deck: DeckMonth,
  months: readonly ClimateMonth[],
  view: PlanView,
  room: RoomCase,
  s: Scenario,
  rec?: Recorder,
): { month: number; humidity: number } {
  const air = airByMonth(view.project.house.setpoints, months, dampness[room], s);
  const year = months.flatMap((climate, i) => {
    const mine = air[i];
    return mine ? [{ climate, air: mine, humidity: deck(climate, mine) }] : [];
  });
  // In months that are as warm outdoors as in the rooms nothing rises into the attic.
  const heated = year.filter((m) => m.air.indoor > m.air.outdoor);
  const worst = (heated.length > 0 ? heated : year).reduce((a, b) => (b.humidity > a.humidity ? b : a));
  if (rec) {
    recordAir(worst.air, rec);
    deck(worst.climate, worst.air, rec);
  }
  return { month: worst.climate.month, humidity: worst.humidity };
}

/** Humidity at the underside of the deck in one month; 1 where it is so cold that frost or dew takes the rest. */
function deckOf(result: LoadsResult, view: PlanView, pressure: number, room: RoomCase, s: Scenario): DeckMonth {
  const attic = required(result.attic);
  const envelope = required(result.leakage);
  const { roof } = view.project.house;
  const heat = airDensity(20, pressure) * heatOfAir;
  const pitch = Math.cos((s.of(roof.pitch) * Math.PI) / 180);
  const absorptance = s.of(roof.absorptance);
  const total = 1 / s.of(roof.uValue) + film + outsideFilm;
  return (climate, { indoor, outdoor, indoorVapour, outdoorVapour }, rec) => {
    const Q = leakageFlow(envelope, indoor - outdoor, climate.wind, rec);
    const up = ceilingLeak[room] * Q;
    rec?.step('Q_up', 'share * Q', { share: ceilingLeak[room], Q }, up, 'm³/s', 'loads.up-leak');
    const vents = attic.vents / heat;
    rec?.step('Q_v', 'G_v / heat', { G_v: attic.vents, heat }, vents, 'm³/s', 'attic.moisture');
    const sun = (climate.sun * pitch * 1000) / 24;
    const sides = {
      rooms: indoor,
      roof: outdoor + solAirRise(absorptance, sun, sunFilm, monthSky),
      air: outdoor,
      ducts: 0,
    };
    // Air that leaks up brings the rooms' warmth along.
    const t = steadyAttic({ ceiling: attic.ceiling + up * heat, roof: attic.roof, vents: attic.vents }, sides, rec);
    const deck = deckTemperature({ attic: t, roof: sides.roof, total, film }, rec);
    const p = atticVapour({ up, vents, rooms: indoorVapour, outdoors: outdoorVapour }, rec);
    const saturation = magnusPressure(deck);
    rec?.step('p_sat', 'table', { t_deck: deck }, saturation, 'Pa', 'iso-13788.saturation');
    const humidity = Math.min(1, p / saturation);
    rec?.step('RH', 'min(1, p_attic / p_sat)', { p_attic: p, p_sat: saturation }, humidity, '', 'attic.moisture');
    return humidity;
  };
}
