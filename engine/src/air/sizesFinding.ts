import { attempt, required } from '../plan/outcome.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './found.ts';
import type { AirResult } from './result.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';
import { wayOut } from './sizing/waysOut.ts';

/** Whether the ducts as drawn can bring every room the air it asks for, and which stocked sizes would; and each duct that none serves. */
export const sizesFindings = (result: AirResult): Found[] => [sizesFinding(result), ...closedFindings(result)];

function sizesFinding({ sizing }: AirResult): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const pressure = needed(required(sizing));
    recorder.step('dp', 'table', {}, pressure, 'Pa', 'air.sizing');
    return pressure;
  });
  return {
    draft: {
      id: 'sizes',
      subject: 'ducts',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'pressure',
      value,
      limit: sizing.ok ? { max: Math.max(0, sizing.value.sizing.budget) } : {},
      source: 'air.sizing',
      working: 'air/sizes',
      facts: sizing.ok ? factsOf(sizing.value) : {},
    },
    working: steps,
  };
}

/** Pa of the ducts as drawn; where no choice fits, at least what the most generous sizes that go in ask for. */
const needed = ({ drawn, sizing }: DuctSizing): number =>
  sizing.status === 'fits' ? drawn.totals.pressure : Math.max(drawn.totals.pressure, sizing.leastPressure ?? 0);

function factsOf(d: DuctSizing): NonNullable<Found['draft']['facts']> {
  const { sizing, changed, sections, flow } = d;
  const [first] = changed;
  return {
    flow,
    goal: sizing.goal,
    fits: sizing.status === 'fits' ? 1 : 0,
    generous: needed(d) > d.drawn.totals.pressure ? 1 : 0,
    changed: changed.length,
    ...(sizing.status === 'fits' ? {} : { ways: sizing.relaxations.map((r) => wayOut(d, r)) }),
    ...(first === undefined ? {} : { name: sections[first]?.name ?? first }),
  };
}

/** A duct for which no size to be had keeps within its space and its speed. */
function closedFindings({ sizing }: AirResult): Found[] {
  if (!sizing.ok || sizing.value.sizing.status === 'fits') return [];
  const d = sizing.value;
  const { closed, relaxations } = sizing.value.sizing;
  return closed.map((id) => {
    const { recorder, steps } = recordWorking();
    recorder.step('n', 'table', {}, 0, '', 'air.sizing');
    const s = d.sections[id];
    return {
      draft: {
        id: `no-size:${id}`,
        subject: id,
        holdPoint: 'order',
        consequence: 'money',
        kind: 'count',
        value: { ok: true, value: 0 },
        limit: { min: 1 },
        source: 'air.sizing',
        working: `air/no-size:${id}`,
        facts: {
          name: s?.name ?? id,
          flow: s?.flow ?? 0,
          sizes: s?.options.length ?? 0,
          space: s?.space ? [s.space] : [],
          ways: relaxations.filter((r) => r.section === id).map((r) => wayOut(d, r)),
        },
      },
      working: steps,
    };
  });
}
