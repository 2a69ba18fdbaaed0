import { attempt, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { recordWorking } from '../plan/working.ts';
import { type About, draftOf, type Found } from './about.ts';
import type { CandidateInput } from './unitModel.ts';

const inputOf = ({ candidate, project }: About): CandidateInput =>
  project.candidates[candidate.id] ?? unresolved('missing', `candidates.${candidate.id}`);

/** The electrical gate: what stops a unit outright, asked before anything is ordered. */
export function electricalFindings(about: About): Found[] {
  const own = 'choice' in about.project.power.supply && about.project.power.supply.choice === 'own';
  const gate: About = { ...about, holdPoint: 'decide' };
  const always = [voltage(gate), phases(gate), frequency(gate)];
  return own ? [...always, inverter(gate), ...strips(gate), standingDraw(gate)] : always;
}

function voltage(about: About): Found {
  const { recorder, steps } = recordWorking();
  const s = scenario();
  const { power } = about.project;
  const here = s.maybe(power.voltage) ?? 240;
  const value = attempt(() => {
    const { voltage } = inputOf(about).electrics;
    const v = s.of(voltage);
    if (!('missing' in voltage)) recorder.given('V_unit', voltage);
    return v;
  });
  return {
    draft: {
      ...draftOf(about, 'voltage'),
      consequence: 'damage',
      kind: 'voltage',
      value,
      limit: { min: 0.9 * here, max: 1.1 * here },
      source: 'equipment.supply',
      facts: { name: about.candidate.name, here },
    },
    working: steps,
  };
}

function phases(about: About): Found {
  const { recorder, steps } = recordWorking();
  const s = scenario();
  const count = (choice: 'one' | 'three') => (choice === 'three' ? 3 : 1);
  const value = attempt(() => {
    const n = count(s.choice(inputOf(about).electrics.phases));
    recorder.step('phases', 'table', {}, n, '', 'equipment.supply');
    return n;
  });
  return {
    draft: {
      ...draftOf(about, 'phases'),
      consequence: 'money',
      kind: 'count',
      value,
      limit: { max: count(s.choice(about.project.power.phases)) },
      source: 'equipment.supply',
      facts: { name: about.candidate.name },
    },
    working: steps,
  };
}

function frequency(about: About): Found {
  const { recorder, steps } = recordWorking();
  const s = scenario();
  const here = s.maybe(about.project.power.frequency) ?? 60;
  const value = attempt(() => {
    const { frequency: given } = inputOf(about).electrics;
    if (!('missing' in given)) recorder.given('f_unit', given);
    return s.of(given);
  });
  return {
    draft: {
      ...draftOf(about, 'frequency'),
      consequence: 'damage',
      kind: 'frequency',
      value,
      limit: { min: here - 1, max: here + 1 },
      source: 'equipment.supply',
      facts: { name: about.candidate.name, here },
    },
    working: steps,
  };
}

/** Everything at once on the inverter, without backup strips. */
function inverter(about: About): Found {
  const { recorder, steps } = recordWorking();
  const s = scenario();
  const { power } = about.project;
  const continuous = s.maybe(power.inverter.continuous);
  const value = attempt(() => {
    s.of(power.inverter.continuous);
    const { powerMost } = inputOf(about).electrics;
    const [unit, other] = [s.of(powerMost), s.of(power.otherLoad)];
    if ('missing' in powerMost || 'missing' in power.otherLoad) return unresolved('missing', power.otherLoad.path);
    recorder.given('P_unit', powerMost);
    recorder.given('P_other', power.otherLoad);
    recorder.step('P', 'P_unit + P_other', { P_unit: unit, P_other: other }, unit + other, 'W', 'equipment.inverter');
    return {
      low: powerMost.low + power.otherLoad.low,
      likely: unit + other,
      high: powerMost.high + power.otherLoad.high,
    };
  });
  return {
    draft: {
      ...draftOf(about, 'inverter'),
      consequence: 'money',
      kind: 'electric-power',
      value,
      limit: continuous === undefined ? {} : { max: continuous },
      source: 'equipment.inverter',
      facts: { name: about.candidate.name, ...(continuous === undefined ? {} : { continuous }) },
    },
    working: steps,
  };
}

/** The same with the strips on, as a unit calls for them in the cold or in defrost unless they are locked out. */
function strips(about: About): Found[] {
  const s = scenario();
  const input = about.project.candidates[about.candidate.id];
  const { power } = about.project;
  const watts = input ? (s.maybe(input.electrics.strips) ?? 0) : 0;
  if (!input || watts <= 0) return [];
  const { recorder, steps } = recordWorking();
  const continuous = s.maybe(power.inverter.continuous);
  const value = attempt(() => {
    s.of(power.inverter.continuous);
    const [unit, other] = [s.of(input.electrics.powerMost), s.of(power.otherLoad)];
    recorder.step('P_strips', 'table', {}, watts, 'W', 'equipment.inverter');
    recorder.step(
      'P',
      'P_unit + P_other + P_strips',
      { P_unit: unit, P_other: other, P_strips: watts },
      unit + other + watts,
      'W',
      'equipment.inverter',
    );
    return unit + other + watts;
  });
  return [
    {
      draft: {
        ...draftOf(about, 'strips'),
        consequence: 'harm',
        kind: 'electric-power',
        value,
        limit: continuous === undefined ? {} : { max: continuous },
        source: 'equipment.inverter',
        facts: { name: about.candidate.name, strips: watts, ...(continuous === undefined ? {} : { continuous }) },
      },
      working: steps,
    },
  ];
}

/** What never rests, kWh a day. */
function standingDraw(about: About): Found {
  const { recorder, steps } = recordWorking();
  const s = scenario();
  const value = attempt(() => {
    const { standby, crankcase, panHeater } = inputOf(about).electrics;
    const parts = { P_standby: s.of(standby), P_crankcase: s.of(crankcase), P_pan: s.of(panHeater) };
    for (const [symbol, given] of [
      ['P_standby', standby],
      ['P_crankcase', crankcase],
      ['P_pan', panHeater],
    ] as const)
      if (!('missing' in given)) recorder.given(symbol, given);
    const day = ((parts.P_standby + parts.P_crankcase + parts.P_pan) * 24) / 1000;
    recorder.step('E', '(P_standby + P_crankcase + P_pan) * 24 / 1000', parts, day, 'kWh', 'equipment.standing');
    return day;
  });
  return {
    draft: {
      ...draftOf(about, 'standing-draw'),
      consequence: 'money',
      kind: 'energy',
      value,
      limit: { max: 1.5 },
      source: 'equipment.standing',
      facts: { name: about.candidate.name },
    },
    working: steps,
  };
}
