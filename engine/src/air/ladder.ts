import { airDensity } from '../physics/air/index.ts';
import type { AirFlows, AirModel, DuctSection, Terminal } from './ductwork.ts';
import { nominalAir } from './flows.ts';
import { sideOf } from './model.ts';

export type Rung = {
  readonly piece: string;
  readonly side: 'supply' | 'return' | 'unit';
  readonly drop: number;
  /** The section it is, where it is one. */
  readonly section?: string;
  /** It is the piece between the unit and its duct. */
  readonly atUnit?: true;
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
    ...sections.flatMap((x): Rung[] => {
      const [drop, atUnit] = [flows.drops[x.id] ?? 0, unitEndDrop(model, flows, x)];
      const piece: Rung = { piece: 'Piece at the unit', side, drop: atUnit, atUnit: true };
      return [...(atUnit > 0 ? [piece] : []), { piece: x.name, side, drop: drop - atUnit, section: x.id }];
    }),
    { piece: terminal.name, side, drop: terminal.resistance * q * q },
  ];
}

/** Pa of a section's drop that its piece at the unit takes, in the air that flows are solved in before anything is agreed. */
export function unitEndDrop({ pressure }: AirModel, flows: AirFlows, { id, side, area, unitEnd }: DuctSection): number {
  if (!unitEnd) return 0;
  const { returnTemperature, supplyTemperature } = nominalAir;
  const density = airDensity(side === 'supply' ? supplyTemperature : returnTemperature, pressure);
  return (unitEnd.loss * density * ((flows.sections[id] ?? 0) / area) ** 2) / 2;
}
