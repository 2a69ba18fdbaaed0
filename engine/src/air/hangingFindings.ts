import { inOrder } from '@kneewall/project';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { AirModel, DuctSection } from './ductwork.ts';
import type { Found } from './found.ts';

/** m between hangers (4 ft), sag for each metre of spacing (1/2 in a foot), least radius of a bend in diameters. */
const spacingMost = 1.2192;
const sagMost = 1 / 24;
const radiusLeast = 1;

type Worst = { readonly section: DuctSection; readonly value: number };

/** How flexible duct is hung: what decides its slack, and so its friction. The worst run of each kind is named. */
export function hangingFindings(model: AirModel, view: PlanView): Found[] {
  const flexible = model.sections.filter((x) => x.kind === 'flexible');
  const by = (reading: (x: DuctSection) => number | undefined): Worst[] =>
    flexible.flatMap((section) => {
      const value = reading(section);
      return value === undefined ? [] : [{ section, value }];
    });
  const spacing = largest(by((x) => x.supports));
  const sag = largest(by((x) => sagOf(x, view)));
  const bend = smallest(by((x) => tightestBend(x, view)));
  return [
    ...(spacing ? [found('hangers', spacing, 'length', { max: spacingMost }, 'air.hangers')] : []),
    ...(sag ? [found('sag', sag, 'fraction', { max: sagMost }, 'air.sag')] : []),
    ...(bend ? [found('tight-bend', bend, 'number', { min: radiusLeast }, 'air.tight-bend')] : []),
  ];
}

const largest = (all: readonly Worst[]): Worst | undefined =>
  [...all].sort((a, b) => b.value - a.value || (a.section.id < b.section.id ? -1 : 1))[0];
const smallest = (all: readonly Worst[]): Worst | undefined =>
  [...all].sort((a, b) => a.value - b.value || (a.section.id < b.section.id ? -1 : 1))[0];

/** Sag as a share of the way between two hangers, where it was measured. */
function sagOf(x: DuctSection, view: PlanView): number | undefined {
  const input = view.project.routes.ducts.sections[x.id];
  const sag = input ? scenario().maybe(input.sag) : undefined;
  return sag === undefined ? undefined : sag / x.supports;
}

/** The smallest radius that was given for a bend of this run, in diameters. */
function tightestBend(x: DuctSection, view: PlanView): number | undefined {
  const s = scenario();
  const radii = inOrder(view.project.routes.ducts.sections[x.id]?.fittings ?? {}).flatMap(([, f]) => {
    const radius = s.choice(f.kind) === 'bend-flexible' ? s.maybe(f.radius) : undefined;
    return radius === undefined ? [] : [radius];
  });
  return radii.length > 0 ? Math.min(...radii) : undefined;
}

function found(
  id: string,
  { section, value }: Worst,
  kind: 'length' | 'fraction' | 'number',
  limit: { min?: number; max?: number },
  source: string,
): Found {
  const { recorder, steps } = recordWorking();
  recorder.step(id === 'tight-bend' ? 'r' : 's', 'table', {}, value, kind === 'length' ? 'm' : '', source);
  return {
    draft: {
      id,
      subject: section.id,
      holdPoint: 'connect',
      consequence: 'money',
      kind,
      value: { ok: true, value },
      limit,
      source,
      working: `air/${id}`,
      facts: { name: section.name, diameter: section.diameter },
    },
    working: steps,
  };
}
