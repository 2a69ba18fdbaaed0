import { airDensity } from '../physics/air/index.ts';
import { heatOfAir, keptShare, outletTemperature } from '../physics/flow/index.ts';
import type { AirModel, DuctSection } from './ductwork.ts';
import { leakOf, type PlacedFlows } from './flows.ts';
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
  /** W to the rooms against room air, cooling negative: by registers, and from ducts that lie in the rooms. */
  readonly delivered: number;
  /** W through walls and with leaking air into the attic; negative where the attic gives. */
  readonly heatToAttic: number;
  readonly supplyLeak: number;
  readonly returnLeak: number;
};

/** Flows m³/s by place, sections before terminals. */
type Flows = Pick<PlacedFlows, 'start'>;

/** Heat of one state: see `ductHeatOf`. */
export const ductHeat = (model: AirModel, flows: Flows, at: DuctSurroundings): DuctHeat => ductHeatOf(model)(flows, at);

/**
 * Heat along every run of these ducts at one state after the other: the temperature at each register, what the attic
 * gets, and the air that comes back to the unit. Flows are m³/s of return air at the blower. The unit's heat is exactly
 * what the rooms, attic and other places get (see the test). Air that leaks in where it is drawn from is as warm as that
 * place. Source: `air.duct-heat`.
 */
export function ductHeatOf(model: AirModel): (flows: Flows, at: DuctSurroundings) => DuctHeat {
  const { sections, terminals } = model;
  const place = new Map(sections.map((x, i) => [x.id, i]));
  const placeOf = (id: string | undefined): number => (id === undefined ? sections.length : (place.get(id) ?? -1));
  const run = (x: DuctSection): Run => ({ x, i: placeOf(x.id), from: placeOf(x.from) });
  const [out, back] = [sectionsOf(model, 'supply').map(run), sectionsOf(model, 'return').map(run).reverse()];
  const supplied = new Set(out.map(({ i }) => i));
  const grilles = terminals.map((t, i) => ({ id: t.id, section: placeOf(t.section), i: sections.length + i }));
  const registers = grilles.filter((t) => supplied.has(t.section));
  return ({ start: q }, at) => {
    const density = airDensity(at.returnTemperature, model.pressure);
    const supply = supplySide(out, q, at, density);
    const returned = returnSide(back, grilles, sections.length, q, at, density);
    const reached = Object.fromEntries(
      registers.map(({ id, section, i }) => {
        const [flow, temperature] = [q[i] ?? 0, supply.ends[section] ?? at.leaving];
        return [id, { flow, temperature, heat: capacity(flow, density) * (temperature - at.indoor) }];
      }),
    );
    return {
      registers: reached,
      entering: returned.entering,
      delivered: Object.values(reached).reduce((a, r) => a + r.heat, supply.toRooms + returned.toRooms),
      heatToAttic: supply.toAttic + returned.toAttic,
      supplyLeak: leakOf(sections, q, 'supply'),
      returnLeak: leakOf(sections, q, 'return'),
    };
  };
}

/** A section with its place and that of the one it joins; the unit's is behind all. */
type Run = { readonly x: DuctSection; readonly i: number; readonly from: number };

const capacity = (q: number, density: number): number => q * density * heatOfAir;

const around = ({ place }: DuctSection, at: DuctSurroundings): number =>
  place === 'attic' ? at.attic : place === 'below' ? at.below : at.indoor;

function supplySide(out: readonly Run[], flows: Float64Array, at: DuctSurroundings, density: number) {
  const ends: number[] = [];
  let [toAttic, toRooms] = [0, 0];
  for (const { x, i, from } of out) {
    const inlet = ends[from] ?? at.leaving;
    const q = flows[i] ?? 0;
    const outlet = outletTemperature(inlet, around(x, at), keptShare(x.surface, x.insulation, q * density));
    ends[i] = outlet;
    const given = capacity(q, density) * (inlet - outlet) + capacity(q * x.leakage, density) * (outlet - around(x, at));
    if (x.place === 'attic') toAttic += given;
    if (x.place === 'inside') toRooms += given;
  }
  return { ends, toAttic, toRooms };
}

function returnSide(
  back: readonly Run[],
  grilles: readonly { readonly section: number; readonly i: number }[],
  unit: number,
  flows: Float64Array,
  at: DuctSurroundings,
  density: number,
): { entering: number; toAttic: number; toRooms: number } {
  // Flow and heat arriving at each section's far end: from its grilles, from sections farther out, and by leaks.
  const [flow, heat] = [new Float64Array(unit + 1), new Float64Array(unit + 1)];
  const add = (place: number, q: number, temperature: number) => {
    flow[place] = (flow[place] ?? 0) + q;
    heat[place] = (heat[place] ?? 0) + q * temperature;
  };
  const mixed = (place: number): number => {
    const [q = 0, h = 0] = [flow[place], heat[place]];
    return q > 0 ? h / q : at.indoor;
  };
  for (const { section, i } of grilles) add(section, flows[i] ?? 0, at.indoor);
  let [toAttic, toRooms] = [0, 0];
  for (const { x, i, from } of back) {
    const q = flows[i] ?? 0;
    add(i, q * x.leakage, around(x, at));
    const inlet = mixed(i);
    const outlet = outletTemperature(inlet, around(x, at), keptShare(x.surface, x.insulation, q * density));
    const given = capacity(q, density) * (inlet - outlet);
    if (x.place === 'attic') toAttic += given;
    if (x.place === 'inside') toRooms += given;
    add(from, q, outlet);
  }
  return { entering: mixed(unit), toAttic, toRooms };
}
