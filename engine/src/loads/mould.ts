import type { ClimateMonth } from '../climate/result.ts';
import { insideFilm } from '../physics/conduction/index.ts';
import { leastTemperature, type MonthAir, mouldFilm, mouldHumidity, surfaceFactor } from '../physics/moisture/index.ts';
import type { Recorder } from '../physics/recorder.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working, type WorkingRecorder } from '../plan/working.ts';
import { assemblyU } from './assembly.ts';
import { type ColdSide, coldSides } from './coldSides.ts';
import { airByMonth, type Dampness, dampness, recordAir } from './roomAir.ts';

/** The coldest inner surface of walls, ceilings and roofs: how far it stays above the temperature of mould, K. */
export function mould(view: PlanView): { draft: Draft; working: Working }[] {
  const { climate } = view.trades;
  if (!climate) return [];
  const s = scenario();
  const sides = coldSides(view.project.house, s).map((side) => ({ side, factor: attempt(() => factorOf(side, s)) }));
  const coldest = sides.reduce<(typeof sides)[number] | undefined>((a, b) => (a && !colder(b, a) ? a : b), undefined);
  if (!coldest) return [];
  const { side } = coldest;
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const factor = factorOf(side, s, recorder);
    const by = (damp: Dampness, rec?: Recorder) => above(factor, required(climate.months), damp, view, s, rec);
    return { low: by(dampness.high), likely: by(dampness.likely, recorder), high: by(dampness.low) };
  });
  return [
    {
      draft: {
        id: `mould:${side.id}`,
        subject: side.id,
        holdPoint: 'close',
        consequence: 'damage',
        kind: 'temperature-difference',
        value,
        limit: { min: 0 },
        source: 'iso-13788.surface',
        working: `loads/mould:${side.id}`,
        facts: { name: side.name },
      },
      working: steps,
    },
  ];
}

type Side = { readonly factor: Outcome<number> };
/** One whose factor is not known may be the coldest of all, so it stands before those that are known. */
const colder = (a: Side, b: Side): boolean => b.factor.ok && (!a.factor.ok || a.factor.value < b.factor.value);

/** Temperature factor with the film that furniture and corners leave, in the most exposed place. */
function factorOf({ assembly, settings }: ColdSide, s: Scenario, rec?: WorkingRecorder): number {
  const [setting] = settings;
  const u = assemblyU(assembly, setting, s, rec);
  const film = insideFilm[setting.direction];
  const total = 1 / u - film + mouldFilm;
  rec?.step(
    'R_T',
    '1 / U - R_si + R_mould',
    { U: u, R_si: film, R_mould: mouldFilm },
    total,
    'm²K/W',
    'iso-13788.surface',
  );
  const factor = surfaceFactor(total, mouldFilm);
  rec?.step('f', '(R_T - R_mould) / R_T', { R_T: total, R_mould: mouldFilm }, factor, '', 'iso-13788.surface');
  return factor;
}

/** The surface in the month that asks most of it, less the temperature at which its air is at 80 %, K. */
function above(
  factor: number,
  months: readonly ClimateMonth[],
  damp: Dampness,
  view: PlanView,
  s: Scenario,
  rec?: Recorder,
): number {
  const year = airByMonth(view.project.house.setpoints, months, damp, s);
  // Where rooms are not the warmer side no surface is to blame for damp air.
  const heated = year.filter((a) => a.indoor > a.outdoor);
  const worst = (heated.length > 0 ? heated : year).reduce((a, b) => (surplus(b, factor) < surplus(a, factor) ? b : a));
  if (rec) recordAir(worst, rec);
  return surplus(worst, factor, rec);
}

function surplus({ indoor, outdoor, indoorVapour }: MonthAir, factor: number, rec?: Recorder): number {
  const surface = outdoor + factor * (indoor - outdoor);
  const least = leastTemperature(indoorVapour, mouldHumidity);
  const inputs = { t_out: outdoor, f: factor, t_in: indoor };
  rec?.step('t_s', 't_out + f * (t_in - t_out)', inputs, surface, '°C', 'iso-13788.surface');
  rec?.step('t_mould', 'table', { p_in: indoorVapour, RH: mouldHumidity }, least, '°C', 'iso-13788.saturation');
  rec?.step('above', 't_s - t_mould', { t_s: surface, t_mould: least }, surface - least, 'K', 'iso-13788.surface');
  return surface - least;
}
