import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import type { Driver, Spread } from '../plan/scenario.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { condensation } from './condensation.ts';
import { dampAttic } from './dampAttic.ts';
import { houseFindings } from './houseFindings.ts';
import { learnedFindings } from './learned/learnedFindings.ts';
import { mould } from './mould.ts';
import type { LoadsResult } from './result.ts';
import { roomsCover } from './roomsCover.ts';
import { wetLayers } from './wetLayers.ts';

type Found = { readonly draft: Draft; readonly working: Working };

/** What the house's own figures have to answer for. */
export function findings(result: LoadsResult, view: PlanView): Drafts {
  const found = [
    ...roomsCover(result, view),
    leakageDecides(result),
    ...partDominates(result),
    ...winterFuel(result, view),
    ...atticHeat(result),
    ...condensation(result, view),
    ...combustion(view),
    ...houseFindings(result, view),
    ...wetLayers(view),
    ...mould(view),
    ...dampAttic(result, view),
    ...learnedFindings(result),
  ];
  return {
    drafts: found.map((f) => f.draft),
    workings: Object.fromEntries(found.map((f) => [f.draft.working, f.working])),
  };
}

const reach = (d: Driver): number => Math.max(Math.abs(d.atLow), Math.abs(d.atHigh));
const ofLeakage = (d: Driver): boolean => d.path === 'house.airtightness' || d.path === 'house.draught';

/** How much of the load hangs on the guess about draughts. */
function leakageDecides(result: LoadsResult): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const load = required(result.heating);
    const driver = load.drivers.find(ofLeakage);
    const worth = driver ? reach(driver) : 0;
    recorder.step('worth', 'table', {}, worth, 'W', 'spread.first-order');
    recorder.step('Q', 'table', {}, load.likely, 'W', 'loads.transmission');
    recorder.step('share', 'worth / Q', { worth, Q: load.likely }, worth / load.likely, '', 'loads.test-first');
    return worth / load.likely;
  });
  const worth = result.heating.ok
    ? (result.heating.value.drivers.find(ofLeakage) ?? { path: '', atLow: 0, atHigh: 0 })
    : undefined;
  return {
    draft: {
      id: 'leakage-guess',
      subject: 'house',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'fraction',
      value,
      limit: { max: 0.15 },
      source: 'loads.test-first',
      working: 'loads/leakage-guess',
      ...(worth ? { facts: { worth: reach(worth) } } : {}),
    },
    working: steps,
  };
}

/** The one part that carries most of the heat away. */
function partDominates(result: LoadsResult): Found[] {
  const [top] = result.heatingParts;
  if (!top || !result.heating.ok) return [];
  const load = result.heatingParts.reduce((a, p) => a + p.heat, 0);
  const { recorder, steps } = recordWorking();
  recorder.step('Q_part', 'table', {}, top.heat, 'W', 'loads.transmission');
  recorder.step('share', 'Q_part / Q', { Q_part: top.heat, Q: load }, top.heat / load, '', 'loads.dominates');
  return [
    {
      draft: {
        id: 'largest-part',
        subject: top.part,
        holdPoint: 'decide',
        consequence: 'money',
        kind: 'fraction',
        value: { ok: true, value: top.heat / load },
        limit: { max: 0.35 },
        source: 'loads.dominates',
        working: 'loads/largest-part',
        facts: { part: top.part, heat: top.heat },
      },
      working: steps,
    },
  ];
}

/** The house as entered against the fuel that was burned in it. */
function winterFuel(result: LoadsResult, view: PlanView): Found[] {
  if ('missing' in view.project.house.fuel.energy) return [];
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const { burned, computed } = required(result.winter);
    if (!(burned.low > 0)) return unresolved('out-of-range', 'house.fuel.energy', 'house.fuel.efficiency');
    const likely = computed.likely / burned.likely;
    recorder.step('E_house', 'table', {}, computed.likely, 'kWh', 'loads.winter');
    recorder.step('E_fuel', 'table', {}, burned.likely, 'kWh', 'loads.winter');
    recorder.step(
      'ratio',
      'E_house / E_fuel',
      { E_house: computed.likely, E_fuel: burned.likely },
      likely,
      '',
      'loads.winter',
    );
    return { low: apart(computed, burned, likely, -1), likely, high: apart(computed, burned, likely, 1) };
  });
  const facts = {
    ...(result.winter.ok
      ? { burned: result.winter.value.burned.likely, computed: result.winter.value.computed.likely }
      : {}),
    ...(result.narrowed.ok ? { verdict: result.narrowed.value.verdict } : {}),
  };
  return [
    {
      draft: {
        id: 'winter-fuel',
        subject: 'house',
        holdPoint: 'decide',
        consequence: 'money',
        kind: 'fraction',
        value,
        limit: { min: 0.75, max: 1.33 },
        source: 'loads.winter',
        working: 'loads/winter-fuel',
        facts,
      },
      working: steps,
    },
  ];
}

/** The ratio's end, its two parts taken as independent. */
function apart(top: Spread, bottom: Spread, likely: number, sign: 1 | -1): number {
  const [t, b] = sign > 0 ? [top.high, bottom.low] : [top.low, bottom.high];
  return likely + sign * Math.hypot(t / bottom.likely - likely, top.likely / b - likely);
}

/** How hot the place of work gets. */
function atticHeat(result: LoadsResult): Found[] {
  if (!result.attic.ok) return [];
  const { recorder, steps } = recordWorking();
  const value: Outcome<Spread> = attempt(() => {
    const t = required(result.atticDay);
    recorder.step('t_attic', 'table', {}, t.likely, '°C', result.days.ok ? 'loads.by-days' : 'attic.steady');
    return t;
  });
  return [
    {
      draft: {
        id: 'attic-heat',
        subject: 'attic',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'temperature',
        value,
        limit: { max: 40 },
        source: 'loads.attic-work',
        working: 'loads/attic-heat',
      },
      working: steps,
    },
  ];
}

/** An open flue and a return that may pull on it: nothing here can approve that. */
function combustion(view: PlanView): Found[] {
  if (!view.project.house.flue) return [];
  return [
    {
      draft: {
        id: 'combustion-air',
        subject: 'flue',
        holdPoint: 'decide',
        consequence: 'harm',
        kind: 'pressure',
        value: attempt(() => unresolved('missing', 'readings')),
        limit: { min: -2 },
        source: 'loads.combustion',
        working: 'loads/combustion-air',
      },
      working: [],
    },
  ];
}
