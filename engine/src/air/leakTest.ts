import { inIdOrder, type Range } from '@kneewall/project';
import { leakAt } from '../physics/infiltration/index.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking } from '../plan/working.ts';
import type { AirFlows, AirModel, DuctSection } from './ductwork.ts';
import type { Found } from './found.ts';

/** Pa of a duct pressure test, and m³/s a square metre of floor that a finished system may lose at it. Source: `air.leak-test`. */
const testPressure = 25;
const mostPerFloor = (4 * 0.3048 ** 3) / 60 / (100 * 0.3048 ** 2);
/** Pa below which a section has no pressure to speak of: its leak says nothing of its holes. */
const hardlyAny = 0.5;

/** What a pressure test at 25 Pa would find if the ducts leak as described, against what codes allow for the floor served. */
export function leakTest(model: AirModel, flows: AirFlows, view: PlanView): Found {
  const { recorder, steps } = recordWorking();
  const pressures = pressuresIn(model, flows);
  const lost = (s: Scenario): number =>
    model.sections.reduce((a, x) => a + atTest(x, shareOf(x, view, s), flows, pressures), 0);
  const floor = attempt(() => floorOf(view));
  const value = attempt((): Range => {
    required(floor);
    const likely = lost(scenario());
    recorder.step('Q_25', 'table', {}, likely, 'm³/s', 'air.leak-test');
    const { low, high } = spread((s) => ({ lost: lost(s) })).lost;
    return { low, likely, high };
  });
  return {
    draft: {
      id: 'leak-test',
      subject: 'ducts',
      holdPoint: 'close',
      consequence: 'money',
      kind: 'flow',
      value,
      limit: { max: floor.ok ? mostPerFloor * floor.value : 0 },
      source: 'air.leak-test',
      working: 'air/leak-test',
      facts: floor.ok ? { floor: floor.value } : {},
    },
    working: steps,
  };
}

/** What a section is said to leak of what it carries. */
const shareOf = (x: DuctSection, view: PlanView, s: Scenario): number => {
  const input = view.project.routes.ducts.sections[x.id];
  return input ? s.of(input.leakage) : x.leakage;
};

const atTest = (x: DuctSection, share: number, flows: AirFlows, pressures: ReadonlyMap<string, number>): number => {
  const leak = (flows.sections[x.id] ?? 0) * share;
  const pressure = pressures.get(x.id) ?? 0;
  return pressure > hardlyAny ? leakAt(leak, pressure, testPressure) : leak;
};

/** m² of heated floor: the house's figure, else its rooms. */
function floorOf({ project: { house } }: PlanView): number {
  const s = scenario();
  const whole = s.maybe(house.floorArea);
  if (whole !== undefined && whole > 0) return whole;
  const rooms = inIdOrder(house.rooms).filter(([, room]) => s.choice(room.conditioned) === 'yes');
  const sum = rooms.reduce((a, [, room]) => a + s.of(room.floorArea), 0);
  return sum > 0 ? sum : unresolved('missing', 'house.floorArea');
}

/** Mean pressure in each section against its surroundings, Pa: what is used from there to the room, and half of its own. */
function pressuresIn(model: AirModel, flows: AirFlows): ReadonlyMap<string, number> {
  const beyond = (x: DuctSection): number => {
    const face = model.terminals.find((t) => t.section === x.id);
    if (face) return face.resistance * (flows.terminals[face.id] ?? 0) ** 2;
    const next = model.sections.find((y) => y.from === x.id);
    return next ? (flows.drops[next.id] ?? 0) + beyond(next) : 0;
  };
  return new Map(model.sections.map((x) => [x.id, beyond(x) + (flows.drops[x.id] ?? 0) / 2]));
}
