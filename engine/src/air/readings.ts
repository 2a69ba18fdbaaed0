import type { Conditions, ExpectedReading } from '../plan/lines.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { balancedReadings } from './balance/balancedReadings.ts';
import { closedDoorFindings } from './doors/closedDoorFindings.ts';
import { flueLeast } from './doors/housePressureFinding.ts';
import { doorPressureMost } from './doors/shutDoors.ts';
import { sideOf } from './model.ts';
import type { AirResult } from './result.ts';

/** Static pressure first, flows second: a gauge acquits where a bag cannot. */
export function readings(result: AirResult, conditions: Conditions, view: PlanView): readonly ExpectedReading[] {
  const point = view.agreement[conditions.mode];
  if (!point || !view.agreement.converged || !result.model.ok) return [];
  const model = result.model.value;
  const supplies = model.terminals.filter((t) => sideOf(model, t.section) === 'supply');
  return [
    {
      id: 'air/static',
      trade: 'air',
      what: 'Pressure across the air handler, return port to supply port',
      how: 'A water gauge or a cheap digital one (3 to 5 %), unit at full speed, clean filter, all doors and registers open.',
      kind: 'pressure',
      expected: point.staticPressure,
      good: { min: point.staticPressure * 0.8, max: point.staticPressure * 1.2 },
    },
    ...supplies.map((t): ExpectedReading => {
      const flow = point.registers[t.id]?.flow ?? 0;
      return {
        id: `air/flow:${t.id}`,
        trade: 'air',
        what: `Flow from “${t.name}”`,
        how: 'A bag of known volume over the face, timed three times or more. One bag scatters by 20 to 30 %: it convicts, it hardly ever acquits.',
        kind: 'flow',
        expected: flow,
        good: { min: flow * 0.8, max: flow * 1.2 },
      };
    }),
    ...balancedReadings(result, point),
    ...doorReadings(result, view),
    ...flueReading(result, view),
  ];
}

/** Room against hall with the door shut: the quickest reading of the job, and the one hardest to get wrong. */
function doorReadings(result: AirResult, view: PlanView): ExpectedReading[] {
  const { model, flows } = result;
  if (!model.ok || !flows.ok) return [];
  return closedDoorFindings(result, model.value, flows.value, view).flatMap(({ draft }): ExpectedReading[] => {
    if (!draft.value.ok) return [];
    const { value } = draft.value;
    return [
      {
        id: `air/door:${draft.subject}`,
        trade: 'air',
        what: `Pressure of “${String(draft.facts?.name ?? draft.subject)}” against the hall, doors shut`,
        how: 'A gauge set to pascals, its hose under the door, unit at full speed, every door shut that gets shut. Wait until it stands still; wind makes it swing.',
        kind: 'room-pressure',
        expected: typeof value === 'number' ? value : value.likely,
        good: { min: 0, max: doorPressureMost },
      },
    ];
  });
}

/** Rooms with an open flue against outdoors on a calm day, everything on that blows: what a test of the flue begins with. */
function flueReading({ shut }: AirResult, { project }: PlanView): ExpectedReading[] {
  const calm = shut.ok ? shut.value.flue.find((c) => c.weather === 'calm' && c.converged) : undefined;
  if (!calm) return [];
  return [
    {
      id: 'air/house-pressure',
      trade: 'air',
      what: 'Where the flue stands against outdoors, doors shut, blower and exhausts on, less what it was with all of it off',
      how: 'A gauge set to pascals, one hose out through a window on a calm day. Read it with everything off, then with everything on, and take the first from the second.',
      kind: 'room-pressure',
      expected: calm.added,
      good: { min: flueLeast[scenario().choice(project.house.flueOf)], max: 5 },
      caution:
        'This does not prove a flue: have it tested under the worst case by a licensed technician, with a carbon monoxide alarm in the room, before the blower runs with it in use.',
    },
  ];
}
