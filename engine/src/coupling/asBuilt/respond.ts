import type { HouseAir } from '../../air/doors/houseAir.ts';
import { shutSolver } from '../../air/doors/shutDoors.ts';
import { ductHeatOf } from '../../air/ductHeat.ts';
import type { AirModel } from '../../air/ductwork.ts';
import { placedSolver } from '../../air/flows.ts';
import { sideOf } from '../../air/model.ts';
import { addedPressure } from '../../air/networkParts.ts';
import { atticTemperature } from '../../loads/attic.ts';
import { humidityRatio } from '../../physics/air/index.ts';
import { unresolved } from '../../plan/outcome.ts';
import { type Settled, settle } from '../settle.ts';
import type { AsBuilt, Channel, Group, Response } from './system.ts';

/** J/kg, and kg/m³ of water. Source: `condensate.latent`. */
const latentHeat = 2.454e6;
const waterDensity = 1000;
/** s for which the coil's water is caught. */
export const catchTime = 600;
/** Pa below which a drop is not read: a filter counted in the blower's table leaves none. */
const readable = 1;
/** Far below what any instrument shows. */
const residual = 1e-7;
/** W of drying below which no water is waited for. */
const dryLeast = 100;

/**
 * All that can be read of a system in its state: pressures Pa, flows m³/s, temperatures °C, power W, water m³ in ten
 * minutes, running time s an hour. Ends the enclosing attempt where flows do not settle or the sheet does not reach.
 */
export const respond = (system: AsBuilt): readonly Response[] => readOff(system, stateOf(system));

/** All that can be read of a state that was solved. */
export const readOff = (system: AsBuilt, settled: Settled): readonly Response[] =>
  system.house
    ? behindDoors(system.air, system.house, settled)
    : [...pressures(system, settled), ...atUnit(system, settled), ...atTerminals(system, settled)];

/** Ducts, coil and unit agreed in the state of a visit. */
export function stateOf(system: AsBuilt): Settled {
  const { state, air, attic, atticShift = 0 } = system;
  const { mode, outdoor, returnAir, pressure } = state;
  const settled = settle({
    mode,
    unit: system.unit,
    blower: system.blower,
    air,
    attic: (ductHeat) =>
      state.attic ?? atticShift + atticTemperature(attic, { mode, outdoor, indoor: returnAir, ductHeat }),
    outdoor,
    indoor: returnAir,
    indoorHumidity: humidityRatio({ t: returnAir, rh: state.returnHumidity }, pressure),
    pressure,
    solve: placedSolver(),
    heat: ductHeatOf(air),
    speed: state.speed,
    strips: system.stripsOn,
    residual,
  });
  if (!settled.converged) return unresolved('not-converged', 'routes.ducts');
  return settled;
}

const reading = (id: string, group: Group, value: number, subject?: string): Response => {
  const channel: Channel = { id, group, ...(subject === undefined ? {} : { subject }) };
  return { channel, value };
};

function pressures({ air }: AsBuilt, { flows }: Settled): Response[] {
  const [supply = 0, back = 0] = flows.pressures;
  const coil = addedPressure(air, flows.flow);
  return [
    reading('air/static', 'pressure', flows.staticPressure),
    reading('commissioning/supply-static', 'pressure', supply),
    reading('commissioning/return-static', 'pressure', -back),
    ...(flows.filterPressure > readable
      ? [reading('commissioning/filter-drop', 'pressure', flows.filterPressure)]
      : []),
    ...(coil > readable ? [reading('commissioning/coil-drop', 'pressure', coil)] : []),
  ];
}

/** What can be read with all doors shut that get shut: each room's pressure against the hall, and what that leaves across the unit. */
function behindDoors(air: AirModel, house: HouseAir, { flows, point }: Settled): Response[] {
  const at = { supplyTemperature: point.leaving, returnTemperature: point.entering };
  const shut = shutSolver()(air, at, flows, house);
  if (!shut.converged) return unresolved('not-converged', 'house.airtightness');
  return [
    reading('air/static', 'pressure', shut.staticPressure),
    ...Object.entries(shut.rooms).map(([room, { pressure }]) =>
      reading(`commissioning/door-pressure:${room}`, 'room-pressure', pressure, room),
    ),
  ];
}

function atUnit({ state, stripsOn, standing, loss }: AsBuilt, { point, power }: Settled): Response[] {
  const { mode, speed, returnAir, outdoor } = state;
  const given = point.sensible + stripsOn;
  return [
    reading('commissioning/supply-air', 'temperature', point.leaving),
    reading('commissioning/unit-return', 'temperature', point.entering),
    reading('commissioning/power', 'power', power + stripsOn + standing),
    reading('commissioning/room-offset', 'temperature', 0),
    ...(mode === 'cooling' && point.latent > dryLeast
      ? [reading('commissioning/drain', 'water', (point.latent / latentHeat / waterDensity) * catchTime)]
      : []),
    ...(mode === 'heating' && speed === 'least' && loss !== undefined
      ? [reading('commissioning/running', 'time', 3600 * Math.min(1, (loss * (returnAir - outdoor)) / given))]
      : []),
  ];
}

function atTerminals({ air }: AsBuilt, { point, flows }: Settled): Response[] {
  return air.terminals.flatMap((t) => {
    const flow = flows.terminals[t.id] ?? 0;
    if (sideOf(air, t.section) === 'return') return [reading(`commissioning/grille-flow:${t.id}`, 'flow', flow, t.id)];
    return [
      reading(`air/flow:${t.id}`, 'flow', flow, t.id),
      reading(
        `commissioning/register-air:${t.id}`,
        'temperature',
        point.registers[t.id]?.temperature ?? point.leaving,
        t.id,
      ),
    ];
  });
}
