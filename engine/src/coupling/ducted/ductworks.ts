import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import { nominalAir, solveFlows } from '../../air/flows.ts';
import { bypassAt } from '../../equipment/coil/bypass.ts';
import type { Coil } from '../../equipment/coil/fit.ts';
import type { HouseInputs } from '../../loads/dynamic/houseInputs.ts';
import { hubOf } from '../../loads/dynamic/inside.ts';
import { airDensity, saturationRatio } from '../../physics/air/index.ts';
import type { Ductwork } from '../../physics/building/index.ts';
import { ductLevel, type Served } from './ductLevel.ts';
import type { DuctFlows } from './ductPaths.ts';
import type { Places } from './places.ts';

/** Ducts as the year needs them: plain data, so that equal ducts make equal jobs. */
export type DuctsInputs = {
  readonly model: AirModel;
  /** At the blower's full speed: m³/s of room air. */
  readonly flows: DuctFlows & { readonly flow: number };
  /** W at the coil, and share of the full flow, at the unit's lowest and highest continuous speed; rising. */
  readonly speeds: readonly { readonly output: number; readonly flow: number }[];
  /** The wet coil, where the data sheet shows it. */
  readonly coil?: Coil;
};

/** The same ducts with something changed along every run, and what then flows in them. */
export function changedDucts(ducts: DuctsInputs, change: (x: DuctSection) => DuctSection): DuctsInputs {
  const model = { ...ducts.model, sections: ducts.model.sections.map(change) };
  const { flow, sections, terminals } = solveFlows(model, nominalAir);
  return { ...ducts, model, flows: { flow, sections, terminals } };
}

/** Share of the fan's air that leaks out of, or into, ducts outside the rooms. */
export function leakage({ model, flows }: DuctsInputs): number {
  const outside = model.sections.filter((x) => x.place !== 'inside');
  return outside.reduce((a, x) => a + (flows.sections[x.id] ?? 0) * x.leakage, 0) / flows.flow;
}

/** °C of the air that the flows are counted in. */
const roomAir = 20;

/** The zones of a house as its ducts see them. */
export function placesOf({ shell }: Pick<HouseInputs, 'shell'>): Places {
  const rooms = shell.rooms.map((r) => r.id);
  const has = (behind: string): boolean => shell.surfaces.some((x) => x.behind === behind);
  return {
    rooms,
    ...(has('attic') ? { attic: 'attic' } : {}),
    ...(has('below') ? { below: 'below' } : {}),
    inside: hubOf(shell.rooms)?.id ?? '',
  };
}

/** Where the thermostat hangs: in the room named, else in the hall, or the largest room, that the others open into. */
export function thermostatRoom({ shell, wanted }: Pick<HouseInputs, 'shell' | 'wanted'>): string {
  const named = shell.rooms.find((r) => r.id === wanted.thermostat);
  return (named ?? hubOf(shell.rooms))?.id ?? '';
}

/** The ducts of a house at each speed of its unit, carrying the heat of the systems served. */
export function ductwork(house: HouseInputs, { model, flows, speeds, coil }: DuctsInputs, served: Served): Ductwork {
  const places = placesOf(house);
  const density = airDensity(roomAir, house.pressure);
  const levels = speeds.map(({ output, flow }) => {
    const bypass = coil ? bypassAt(coil.conductance, flow * flows.flow * density) : 1;
    return ductLevel(served, model, flows, places, house.leaks, { output, share: flow, density, bypass });
  });
  return {
    systems: Object.keys(served),
    levels,
    coilRatio: coil ? saturationRatio(coil.surface, house.pressure) : 1,
  };
}

/** One unit for all rooms. */
export const wholeHouse = (house: HouseInputs, id: string): Served => ({ [id]: house.shell.rooms.map((r) => r.id) });

/** Each room by itself, as loads count. */
export const roomByRoom = (house: HouseInputs): Served =>
  Object.fromEntries(house.shell.rooms.map((r) => [r.id, [r.id]]));
