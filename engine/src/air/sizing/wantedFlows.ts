import { unresolved } from '../../plan/outcome.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';

/** m³/s of the blower's air: at every register and grille, and at the unit's end of every section. */
export type WantedFlows = {
  readonly terminals: Readonly<Record<string, number>>;
  readonly sections: Readonly<Record<string, number>>;
};

/**
 * Shares a blower's flow out: supply by what each room wants (m³/s; its registers by their faces), return by open area.
 * Leaks take their share on the way, so that the unit moves exactly `flow`. Ends the enclosing attempt where a room
 * with a register has no wanted flow, or a side has no opening.
 */
export function wantedFlows(model: AirModel, rooms: Readonly<Record<string, number>>, flow: number): WantedFlows {
  const sideOf = new Map(model.sections.map((x) => [x.id, x.side]));
  const faces = new Map<string, number>();
  for (const t of model.terminals)
    if (sideOf.get(t.section) === 'supply') faces.set(t.room, (faces.get(t.room) ?? 0) + t.faceArea);
  const weights = model.terminals.map((t): readonly [string, number] => {
    if (sideOf.get(t.section) === 'return') return [t.id, t.freeArea];
    const wanted = rooms[t.room] ?? unresolved('missing', `house.rooms.${t.room}`);
    return [t.id, (wanted * t.faceArea) / (faces.get(t.room) ?? 1)];
  });
  const weightOf = new Map(weights);
  const raw = carried(model, weightOf);
  const scale = { supply: scaleOf(model, raw, 'supply', flow), return: scaleOf(model, raw, 'return', flow) };
  return {
    terminals: Object.fromEntries(
      model.terminals.map((t) => [t.id, (weightOf.get(t.id) ?? 0) * scale[sideOf.get(t.section) ?? 'supply']]),
    ),
    sections: Object.fromEntries(model.sections.map((x) => [x.id, (raw.get(x.id) ?? 0) * scale[x.side]])),
  };
}

/** What a section carries at the unit's end: what hangs beyond, and the leak that is a share of all it carries. */
function carried(model: AirModel, weights: ReadonlyMap<string, number>): Map<string, number> {
  const flows = new Map<string, number>();
  const of = (x: DuctSection): number => {
    const own = model.terminals.reduce((a, t) => a + (t.section === x.id ? (weights.get(t.id) ?? 0) : 0), 0);
    const all = model.sections.reduce((a, y) => a + (y.from === x.id ? of(y) : 0), own) / (1 - x.leakage);
    flows.set(x.id, all);
    return all;
  };
  for (const x of model.sections) if (x.from === undefined) of(x);
  return flows;
}

function scaleOf(model: AirModel, raw: ReadonlyMap<string, number>, side: DuctSection['side'], flow: number): number {
  const all = model.sections.reduce(
    (a, x) => a + (x.side === side && x.from === undefined ? (raw.get(x.id) ?? 0) : 0),
    0,
  );
  if (!(all > 0)) return unresolved('missing', 'routes.ducts.terminals');
  return flow / all;
}
