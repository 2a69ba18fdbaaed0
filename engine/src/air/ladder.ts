import { sideOf } from './model.ts';
import type { AirFlows, AirModel, DuctSection, Terminal } from './result.ts';

export type Rung = {
  readonly piece: string;
  readonly side: 'supply' | 'return' | 'unit';
  readonly drop: number;
  /** The section it is, where it is one. */
  readonly section?: string;
};

/** Pressure used along the hardest way from the rooms through the unit and back, piece by piece, Pa. */
export function ladderOf(model: AirModel, flows: AirFlows): Rung[] {
  return [
    ...worstWay(model, flows, 'return').reverse(),
    { piece: 'Filter', side: 'unit', drop: flows.filterPressure },
    ...(model.added > 0 ? [{ piece: 'Added at the unit', side: 'unit' as const, drop: model.added }] : []),
    ...worstWay(model, flows, 'supply'),
  ];
}

/** From the unit outward: sections, then the register or grille, of the way with most pressure used. */
function worstWay(model: AirModel, flows: AirFlows, side: 'supply' | 'return'): Rung[] {
  const ways = model.terminals
    .filter((t) => sideOf(model, t.section) === side)
    .map((t) => wayTo(model, flows, t, side));
  const sum = (way: readonly Rung[]) => way.reduce((a, r) => a + r.drop, 0);
  return ways.reduce<Rung[]>((worst, way) => (sum(way) > sum(worst) ? way : worst), []);
}

function wayTo(model: AirModel, flows: AirFlows, terminal: Terminal, side: 'supply' | 'return'): Rung[] {
  const sections: DuctSection[] = [];
  for (let at = model.sections.find((x) => x.id === terminal.section); at; ) {
    sections.unshift(at);
    const { from } = at;
    at = from === undefined ? undefined : model.sections.find((x) => x.id === from);
  }
  const q = flows.terminals[terminal.id] ?? 0;
  return [
    ...sections.map((x): Rung => ({ piece: x.name, side, drop: flows.drops[x.id] ?? 0, section: x.id })),
    { piece: terminal.name, side, drop: terminal.resistance * q * q },
  ];
}
