import type { Move } from '../../coupling/balancing/system.ts';
import { hotAttic } from '../../plan/cautions.ts';
import type { Task } from '../../plan/lines.ts';
import { minutes } from '../../plan/minutes.ts';
import { tool } from '../../plan/tools.ts';
import type { Visit } from '../result.ts';

/** Minutes for a damper and its mark, and for the way to each spot. Common practice, no source: `commissioning.balancing`. */
const eachDamper = minutes(2, 4, 8);
const eachSpot = minutes(3, 5, 12);

/**
 * The dampers that the last balanced visit asks to move, as work: all in the attic in one trip, with a safe stop after each spot; those
 * at registers indoors; then the registers whose reading tells whether a second trip is needed. Nothing where nothing is to move.
 */
export function balanceTasks(visits: readonly Visit[]): readonly Task[] {
  const last = visits.findLast((v) => v.balancing?.found.ok);
  const found = last?.balancing?.found;
  if (!last || !found?.ok || found.value.moves.length === 0) return [];
  const { moves, checks } = found.value;
  const above = moves.filter((m) => m.inAttic);
  const below = moves.filter((m) => !m.inAttic);
  const trips = [
    ...(above.length > 0 ? [moving('move-dampers-attic', last.name, above)] : []),
    ...(below.length > 0 ? [moving('move-dampers-inside', last.name, below)] : []),
  ];
  return [
    ...trips,
    {
      ...base,
      id: 'commissioning/read-balanced',
      what: `After the dampers: read ${checks.length > 1 ? `${checks.length} registers` : 'the register'} that “${last.name}” asks for, the same way as before`,
      duration: minutes(10, 15 * Math.max(1, checks.length), 40 * Math.max(1, checks.length)),
      people: 1,
      place: 'inside',
      after: trips.map((t) => t.id),
      safeStops: ['After each register'],
      cautions: [],
      tools: ['Bag on a hoop, stop watch'],
      doneWhen: ['Within 15 % of what was expected, or all registers read again for a second trip'],
      needs: ['power'],
    },
  ];
}

const base = { trade: 'commissioning', holdPoint: 'start' } as const;

function moving(id: string, visit: string, moves: readonly Move[]): Task {
  const spots = new Set(moves.map((m) => m.spot)).size;
  const [first] = moves;
  const time = (end: 'low' | 'likely' | 'high'): number => moves.length * eachDamper[end] + spots * eachSpot[end];
  const named = moves.map((m) => `“${m.name}”`).join(', ');
  const inAttic = first?.inAttic === true;
  return {
    ...base,
    id: `commissioning/${id}`,
    what: `${inAttic ? 'One trip into the attic' : 'Indoors'}: move ${moves.length === 1 ? 'the damper' : `${moves.length} dampers`} of ${named}, as the readings of “${visit}” ask`,
    duration: { low: time('low'), likely: time('likely'), high: time('high') },
    people: inAttic ? 2 : 1,
    place: inAttic ? 'attic' : 'inside',
    parts: spots,
    after: ['commissioning/first-readings'],
    safeStops: ['After each spot: handles locked and marked, none shut'],
    cautions: [...(inAttic ? [hotAttic] : []), 'Static pressure once more at the end: dampers add to it.'],
    tools: [tool.lamp, tool.gauge, tool.marker],
    doneWhen: [
      'Each handle stands where it was asked for, locked, marked with the day; where it stood is written down',
    ],
  };
}
