import { airDensity } from '../physics/air/index.ts';
import { heatOfAir, keptShare, outletTemperature } from '../physics/flow/index.ts';
import type { AirFlows, AirModel, DuctSection } from './result.ts';
import { sectionsOf } from './sectionsOf.ts';

export type DuctSurroundings = {
  /** Supply air as it leaves the unit, °C. */
  readonly leaving: number;
  readonly indoor: number;
  readonly attic: number;
  readonly below: number;
  /** °C at which the flows are counted: the return air they were solved with. */
  readonly returnTemperature: number;
};

export type DuctHeat = {
  readonly registers: Readonly<
    Record<string, { readonly flow: number; readonly temperature: number; readonly heat: number }>
  >;
  /** Return air as it reaches the unit, °C. */
  readonly entering: number;
  /** W to the rooms against room air, cooling negative. */
  readonly delivered: number;
  /** W through walls and with leaking air into the attic; negative where the attic gives. */
  readonly heatToAttic: number;
  readonly supplyLeak: number;
  readonly returnLeak: number;
};

/**
 * Heat along every run: the temperature at each register, what the attic gets, and the air that comes back to the
 * unit. Flows are m³/s of return air at the blower. The unit's heat is exactly what the rooms, attic and other places
 * get (see the test). Air that leaks in where it is drawn from is as warm as that place. Source: `air.duct-heat`.
 */
export function ductHeat(model: AirModel, flows: AirFlows, at: DuctSurroundings): DuctHeat {
  const density = airDensity(at.returnTemperature, model.pressure);
  const capacity = (q: number): number => q * density * heatOfAir;
  const around = (x: DuctSection): number =>
    x.place === 'attic' ? at.attic : x.place === 'below' ? at.below : at.indoor;
  const ends = new Map<string, number>();
  let toAttic = 0;
  for (const x of sectionsOf(model, 'supply')) {
    const inlet = x.from === undefined ? at.leaving : (ends.get(x.from) ?? at.leaving);
    const q = flows.sections[x.id] ?? 0;
    const outlet = outletTemperature(inlet, around(x), keptShare(x.surface, x.insulation, q * density));
    ends.set(x.id, outlet);
    if (x.place === 'attic') toAttic += capacity(q) * (inlet - outlet) + capacity(q * x.leakage) * (outlet - at.attic);
  }
  const registers = Object.fromEntries(
    model.terminals
      .filter((t) => ends.has(t.section))
      .map((t) => {
        const temperature = ends.get(t.section) ?? at.leaving;
        const flow = flows.terminals[t.id] ?? 0;
        return [t.id, { flow, temperature, heat: capacity(flow) * (temperature - at.indoor) }];
      }),
  );
  const back = returnSide(model, flows, at, around, capacity, density);
  return {
    registers,
    entering: back.entering,
    delivered: Object.values(registers).reduce((a, r) => a + r.heat, 0),
    heatToAttic: toAttic + back.toAttic,
    supplyLeak: flows.supplyLeak,
    returnLeak: flows.returnLeak,
  };
}

function returnSide(
  model: AirModel,
  flows: AirFlows,
  at: DuctSurroundings,
  around: (x: DuctSection) => number,
  capacity: (q: number) => number,
  density: number,
): { entering: number; toAttic: number } {
  const sections = sectionsOf(model, 'return').reverse();
  // Heat and flow arriving at each section's far end: from its grilles, from sections farther out, and by leaks.
  const arriving = new Map<string, { flow: number; heat: number }>();
  const add = (id: string, flow: number, temperature: number) => {
    const sum = arriving.get(id) ?? { flow: 0, heat: 0 };
    arriving.set(id, { flow: sum.flow + flow, heat: sum.heat + flow * temperature });
  };
  for (const t of model.terminals) add(t.section, flows.terminals[t.id] ?? 0, at.indoor);
  let toAttic = 0;
  for (const x of sections) {
    const q = flows.sections[x.id] ?? 0;
    add(x.id, q * x.leakage, around(x));
    const mixed = arriving.get(x.id);
    const inlet = mixed && mixed.flow > 0 ? mixed.heat / mixed.flow : at.indoor;
    const outlet = outletTemperature(inlet, around(x), keptShare(x.surface, x.insulation, q * density));
    if (x.place === 'attic') toAttic += capacity(q) * (inlet - outlet);
    add(x.from ?? unitInlet, q, outlet);
  }
  const inlet = arriving.get(unitInlet);
  return { entering: inlet && inlet.flow > 0 ? inlet.heat / inlet.flow : at.indoor, toAttic };
}

/** No section has this name: ids have no blanks. */
const unitInlet = 'unit inlet';
