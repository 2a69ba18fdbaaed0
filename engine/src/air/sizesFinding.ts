import { attempt, required } from '../plan/outcome.ts';
import { recordWorking } from '../plan/working.ts';
import type { Found } from './findings.ts';
import type { AirResult } from './result.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';

/** Whether the ducts as drawn can bring every room the air it asks for, and which stocked sizes would. */
export function sizesFinding({ sizing }: AirResult): Found {
  const { recorder, steps } = recordWorking();
  const value = attempt(() => {
    const { drawn } = required(sizing);
    recorder.step('dp_drawn', 'table', {}, drawn.totals.pressure, 'Pa', 'air.sizing');
    return drawn.totals.pressure;
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

function factsOf({ sizing, changed, sections, flow }: DuctSizing): Record<string, number | string> {
  const [first] = changed;
  return {
    flow,
    fits: sizing.status === 'fits' ? 1 : 0,
    changed: changed.length,
    ways: sizing.status === 'fits' ? 0 : sizing.relaxations.length,
    ...(first === undefined ? {} : { name: sections[first]?.name ?? first }),
  };
}
