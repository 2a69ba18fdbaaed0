import type { AirModel } from '../../air/ductwork.ts';
import { behind } from './faulty.ts';
import type { AsBuilt } from './system.ts';

const air = (system: AsBuilt, part: Partial<AirModel>): AsBuilt => ({ ...system, air: { ...system.air, ...part } });
const rows = (system: AsBuilt, capacity: number, power: number): AsBuilt => ({
  ...system,
  unit: {
    ...system.unit,
    rows: system.unit.rows.map((r) => ({ ...r, capacity: r.capacity * capacity, power: r.power * power })),
  },
});
const state = (system: AsBuilt, part: Partial<AsBuilt['state']>): AsBuilt => ({
  ...system,
  state: { ...system.state, ...part },
});

/**
 * What a plan does not know exactly of a system that is sound, each moved by one standard deviation. Common practice,
 * no source: `commissioning.doubts`. What a run's own making adds is in the readings’ own scatter.
 */
export const doubtful: Readonly<Record<string, (system: AsBuilt) => AsBuilt>> = {
  friction: (s) =>
    air(s, {
      sections: s.air.sections.map((x) => ({
        ...x,
        frictionFactor: x.frictionFactor * 1.15,
        lossCoefficient: x.lossCoefficient * 1.15,
      })),
    }),
  blower: (s) =>
    air(s, {
      blower: { ...s.air.blower, points: s.air.blower.points.map((p) => ({ ...p, pressure: p.pressure * 0.94 })) },
    }),
  filter: (s) => air(s, { filter: { ...s.air.filter, pressure: s.air.filter.pressure * 1.2 } }),
  leakage: (s) => air(s, { sections: s.air.sections.map((x) => ({ ...x, leakage: x.leakage * 1.3 })) }),
  insulation: (s) => air(s, { sections: s.air.sections.map((x) => ({ ...x, insulation: x.insulation * 0.85 })) }),
  capacity: (s) => rows(s, 0.95, 1),
  power: (s) => rows(s, 1, 0.95),
  attic: (s) => (s.state.attic === undefined ? { ...s, atticShift: 3 } : state(s, { attic: s.state.attic + 1 })),
  outdoor: (s) => state(s, { outdoor: s.state.outdoor + 0.7 }),
  'return-air': (s) => state(s, { returnAir: s.state.returnAir + 0.4 }),
  // Gaps under doors are entered in whole quarters of an inch, and carpet is not.
  'door-gaps': (s) => behind(s, (r) => ({ ...r, opening: r.opening * 1.2 })),
  'house-leaks': (s) =>
    s.house?.leaks
      ? behind({ ...s, house: { ...s.house, leaks: { ...s.house.leaks, open: s.house.leaks.open * 1.3 } } }, (r) => ({
          ...r,
          leak: r.leak * 1.3,
        }))
      : s,
  humidity: (s) => state(s, { returnHumidity: s.state.returnHumidity + (s.state.humidityRead ? 0.03 : 0.08) }),
};
