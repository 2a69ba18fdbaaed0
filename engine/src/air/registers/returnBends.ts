import { inOrder } from '@kneewall/project';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { sideOf } from '../model.ts';

/** Bends that keep a blower from being looked at through its return. Source: `air.return-noise`. */
const bendsWanted = 1;
const turning: readonly string[] = [
  'elbow-round',
  'elbow-round-tight',
  'elbow-rectangular',
  'elbow-rectangular-vaned',
  'bend-flexible',
  'boot-elbow',
  'tee-branch',
];

/** The straightest way from a return grille to the blower: one without a bend lets its noise straight into the room. */
export function returnBends(model: AirModel, view: PlanView): Found[] {
  const ways = model.terminals
    .filter((t) => sideOf(model, t.section) === 'return')
    .map((t) => ({
      t,
      ...wayOf(
        model.sections.find((x) => x.id === t.section),
        model,
        view,
      ),
    }));
  const [straightest] = [...ways].sort(
    (a, b) => a.bends - b.bends || a.length - b.length || (a.t.id < b.t.id ? -1 : 1),
  );
  if (!straightest) return [];
  const { bends, length, t } = straightest;
  const { recorder, steps } = recordWorking();
  recorder.step('bends', 'table', {}, bends, '', 'air.return-noise');
  return [
    {
      draft: {
        id: 'return-bends',
        subject: t.id,
        holdPoint: 'cut',
        consequence: 'comfort',
        kind: 'count',
        value: { ok: true, value: bends },
        limit: { min: bendsWanted },
        source: 'air.return-noise',
        working: 'air/return-bends',
        facts: { name: t.name, length },
      },
      working: steps,
    },
  ];
}

export function wayOf(x: DuctSection | undefined, model: AirModel, view: PlanView): { bends: number; length: number } {
  if (!x) return { bends: 0, length: 0 };
  const s = scenario();
  const rest = wayOf(
    model.sections.find((y) => y.id === x.from),
    model,
    view,
  );
  const fittings = inOrder(view.project.routes.ducts.sections[x.id]?.fittings ?? {});
  const bends = fittings.reduce((sum, [, f]) => sum + (turning.includes(s.choice(f.kind)) ? s.of(f.count) : 0), 0);
  return { bends: bends + rest.bends, length: x.length + rest.length };
}
