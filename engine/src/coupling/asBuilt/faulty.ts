import type { ShutRoom } from '../../air/doors/houseAir.ts';
import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import { chargeEffect, type FaultKind } from '../../commissioning/causes/faults.ts';
import type { UnitModel } from '../../equipment/result.ts';
import type { AsBuilt } from './system.ts';

type Spoil = (system: AsBuilt, size: number, subject: string) => AsBuilt;

const ducts = (system: AsBuilt, of: (x: DuctSection) => DuctSection): AsBuilt => ({
  ...system,
  air: { ...system.air, sections: system.air.sections.map(of) },
});

const choked = (x: DuctSection, times: number): DuctSection => ({
  ...x,
  frictionFactor: x.frictionFactor * times,
  lossCoefficient: x.lossCoefficient * times,
});

const leaking = (x: DuctSection, share: number): DuctSection => ({
  ...x,
  leakage: Math.min(leakMost, 1 - (1 - x.leakage) * (1 - share)),
});
/** A run that is off altogether still wets its end: the solver wants something to arrive. */
const leakMost = 0.98;

const sectionOf = (air: AirModel, terminal: string): string | undefined =>
  air.terminals.find((t) => t.id === terminal)?.section;

const grilles = (air: AirModel): ReadonlySet<string> =>
  new Set(air.sections.flatMap((x) => (x.side === 'return' ? [x.id] : [])));

const scaled = (unit: UnitModel, by: { readonly capacity: number; readonly power: number }): UnitModel => ({
  ...unit,
  rows: unit.rows.map((r) => ({ ...r, capacity: r.capacity * by.capacity, power: r.power * by.power })),
});

/** Of the first sections on a side, those that lie outside the rooms. */
const firstOutside = (x: DuctSection, side: DuctSection['side']): boolean =>
  x.side === side && x.from === undefined && x.place !== 'inside';

const spoils: Partial<Readonly<Record<FaultKind, Spoil>>> = {
  'dirty-filter': (s, times) => {
    const { filter } = s.air;
    return { ...s, air: { ...s.air, filter: { ...filter, pressure: filter.pressure * times } } };
  },
  'crushed-run': (s, times, subject) => {
    const run = sectionOf(s.air, subject);
    return ducts(s, (x) => (x.id === run ? choked(x, times) : x));
  },
  'shut-damper': (s, times, subject) => ({
    ...s,
    air: {
      ...s.air,
      terminals: s.air.terminals.map((t) => (t.id === subject ? { ...t, resistance: t.resistance * times } : t)),
    },
  }),
  'loose-run': (s, share, subject) => {
    const run = sectionOf(s.air, subject);
    return ducts(s, (x) => (x.id === run ? leaking(x, share) : x));
  },
  'supply-leak': (s, share) => ducts(s, (x) => (firstOutside(x, 'supply') ? leaking(x, share) : x)),
  'return-leak': (s, share) => ducts(s, (x) => (firstOutside(x, 'return') ? leaking(x, share) : x)),
  'return-choked': (s, times) => {
    const back = grilles(s.air);
    const spoilt = ducts(s, (x) => (x.side === 'return' ? choked(x, times) : x));
    return {
      ...spoilt,
      air: {
        ...spoilt.air,
        terminals: s.air.terminals.map((t) => (back.has(t.section) ? { ...t, resistance: t.resistance * times } : t)),
      },
    };
  },
  'low-charge': (s, missing) => ({ ...s, unit: scaled(s.unit, chargeEffect.low(missing)) }),
  'high-charge': (s, over) => ({ ...s, unit: scaled(s.unit, chargeEffect.high(over)) }),
  'no-insulation': (s, left) =>
    ducts(s, (x) => (x.place === 'inside' ? x : { ...x, insulation: Math.max(bare, x.insulation * left) })),
  'strips-on': (s, share) => ({ ...s, stripsOn: s.stripsOn + s.strips * share }),
  'no-transfer': (s, share, room) => behind(s, (r) => (r.id === room ? { ...r, opening: r.opening * share } : r)),
  oversize: (s, share) => (s.loss === undefined ? s : { ...s, loss: s.loss * share }),
};

/** The rooms behind shut doors made otherwise; the same object where the doors stand open. */
export const behind = (s: AsBuilt, of: (room: ShutRoom) => ShutRoom): AsBuilt =>
  s.house ? { ...s, house: { ...s.house, rooms: s.house.rooms.map(of) } } : s;

/** m²K/W of still air at a bare duct. */
const bare = 0.1;

/** The system with a fault of a size in it; the same object where the fault is none of ducts, unit or house. */
export const faulty = (system: AsBuilt, kind: FaultKind, size: number, subject = ''): AsBuilt =>
  spoils[kind]?.(system, size, subject) ?? system;
