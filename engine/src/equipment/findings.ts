import { inOrder } from '@kneewall/project';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import { type About, draftOf, type Found } from './about.ts';
import { electricalFindings } from './electrical.ts';
import type { EquipmentResult } from './result.ts';
import { seasonFindings } from './seasonFindings.ts';

/** From here on a unit is judged and never exchanged. */
const boughtStates: readonly string[] = ['ordered', 'arrived', 'fitted'];

/** What each candidate has to answer for: the chosen one at the order, the others at the decision. */
export function findings(result: EquipmentResult, view: PlanView): Drafts {
  const found = Object.values(result.candidates).flatMap((candidate) => {
    const entry = inOrder(view.project.items).find(([, i]) => i.of === `candidates.${candidate.id}`);
    const isChosen = result.chosen.ok && result.chosen.value === candidate.id;
    const about: About = {
      candidate,
      project: view.project,
      holdPoint: isChosen ? 'order' : 'decide',
      ...(entry ? { item: entry[0] } : {}),
      bought: entry !== undefined && 'choice' in entry[1].state && boughtStates.includes(entry[1].state.choice),
    };
    return [
      holdsNight(about, view),
      cycles(about),
      lowestOutdoor(about, view),
      coolingCovers(about, view),
      ...seasonFindings(about, view),
      ...electricalFindings(about),
      ...learnedPower(about),
    ];
  });
  return {
    drafts: found.map((f) => f.draft),
    workings: Object.fromEntries(found.map((f) => [f.draft.working, f.working])),
  };
}

/** Much more than its papers wants a reason before it is planned with. Source: `equipment.learned`. */
const drawsMost = 1.15;

/** That the unit's draw is scaled by what a log taught. */
function learnedPower(about: About): Found[] {
  const { candidate, project } = about;
  const { power, log } = project.candidates[candidate.id]?.learned ?? {};
  if (!power || 'missing' in power) return [];
  const { recorder, steps } = recordWorking();
  const { low, likely, high } = power;
  recorder.step('f', 'table', {}, likely, '', 'equipment.learned');
  const draft = {
    ...draftOf(about, 'learned-power'),
    consequence: 'money',
    kind: 'fraction',
    value: { ok: true, value: { low, likely, high } },
    limit: { max: drawsMost },
    source: 'equipment.learned',
    facts: { name: candidate.name, log: log ?? '' },
  } as const;
  return [{ draft, working: steps }];
}

function holdsNight(about: About, view: PlanView): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const { heatingSpare, heatingCapacity } = candidate;
  const load = view.trades.loads?.heating;
  if (heatingSpare.ok && heatingCapacity.ok && load?.ok) {
    const inputs = { Q_unit: heatingCapacity.value.likely, Q_house: load.value.likely };
    recorder.step('Q_unit', 'table', {}, inputs.Q_unit, 'W', 'equipment.sheet');
    recorder.step('Q_house', 'table', {}, inputs.Q_house, 'W', 'equipment.covers');
    recorder.step('Q_spare', 'Q_unit - Q_house', inputs, heatingSpare.value.likely, 'W', 'equipment.covers');
  }
  return {
    draft: {
      ...draftOf(about, 'holds-night'),
      consequence: 'damage',
      kind: 'power',
      value: heatingSpare,
      limit: { min: 0 },
      source: 'equipment.covers',
      facts: {
        name: candidate.name,
        ...(heatingCapacity.ok ? { capacity: heatingCapacity.value.likely } : {}),
        ...(candidate.balancePoint.ok ? { balance: candidate.balancePoint.value } : {}),
      },
    },
    working: steps,
  };
}

function cycles(about: About): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const hours = required(candidate.cyclingHours);
    const all = required(candidate.heatingHours);
    if (all <= 0) return unresolved('out-of-range', 'site.coldNight');
    recorder.step('h_cycling', 'table', {}, hours, 'h', 'equipment.cycling');
    recorder.step('h_heating', 'table', {}, all, 'h', 'equipment.cycling');
    recorder.step(
      'share',
      'h_cycling / h_heating',
      { h_cycling: hours, h_heating: all },
      hours / all,
      '',
      'equipment.cycling',
    );
    return hours / all;
  });
  return {
    draft: {
      ...draftOf(about, 'stop-start'),
      consequence: 'money',
      kind: 'fraction',
      value,
      limit: { max: 0.33 },
      source: 'equipment.cycling',
      facts: {
        name: candidate.name,
        ...(candidate.cyclingHours.ok ? { hours: candidate.cyclingHours.value } : {}),
        ...(about.bought ? { bought: 1 } : {}),
      },
    },
    working: steps,
  };
}

function lowestOutdoor(about: About, view: PlanView): Found {
  const { candidate, project } = about;
  const input = project.candidates[candidate.id];
  const { recorder, steps } = recordWorking();
  const night = view.trades.climate?.night;
  const value = attempt(() => {
    const lowest = scenario().of(
      input?.outdoorLeast ?? { path: `candidates.${candidate.id}.outdoorLeast`, missing: true },
    );
    const outdoor = required(night ?? { ok: false, because: 'missing', paths: ['site.coldNight'] }).outdoor;
    if (input && !('missing' in input.outdoorLeast)) recorder.given('t_least', input.outdoorLeast);
    recorder.given('t_out', outdoor);
    const likely = outdoor.likely - lowest;
    recorder.step(
      'above',
      't_out - t_least',
      { t_out: outdoor.likely, t_least: lowest },
      likely,
      'K',
      'equipment.sheet',
    );
    return { low: outdoor.low - lowest, likely, high: outdoor.high - lowest };
  });
  return {
    draft: {
      ...draftOf(about, 'lowest-outdoor'),
      consequence: 'damage',
      kind: 'temperature-difference',
      value,
      limit: { min: 0 },
      marginWanted: 3,
      source: 'equipment.sheet',
      facts: { name: candidate.name },
    },
    working: steps,
  };
}

function coolingCovers(about: About, view: PlanView): Found {
  const { candidate } = about;
  const { recorder, steps } = recordWorking();
  const { coolingSensible, coolingSpare } = candidate;
  const load = view.trades.loads?.cooling;
  if (coolingSensible.ok && coolingSpare.ok && load?.ok) {
    const inputs = { Q_unit: coolingSensible.value.likely, Q_house: load.value.sensible.likely };
    recorder.step('Q_unit', 'table', {}, inputs.Q_unit, 'W', 'equipment.coil');
    recorder.step('Q_house', 'table', {}, inputs.Q_house, 'W', 'equipment.covers');
    recorder.step('Q_spare', 'Q_unit - Q_house', inputs, coolingSpare.value.likely, 'W', 'equipment.covers');
  }
  return {
    draft: {
      ...draftOf(about, 'cools-afternoon'),
      consequence: 'comfort',
      kind: 'power',
      value: coolingSpare,
      limit: { min: 0 },
      source: 'equipment.covers',
      facts: { name: candidate.name },
    },
    working: steps,
  };
}
