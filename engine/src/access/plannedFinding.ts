import type { Range } from '@kneewall/project';
import { required, unresolved } from '../plan/outcome.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { AccessResult, Way } from './result.ts';

/** Whether motion planning has to say whether a piece passes: a flight is to be climbed, or closed forms of a corner do not let it. */
export function plannedFor(way: Way, closed: number): boolean {
  if (!way.asked.ok || way.kind === 'hatch') return false;
  const { after, rise, going, headroom } = way.asked.value.passage;
  const flight = way.kind === 'stair' && rise !== undefined && going !== undefined && headroom !== undefined;
  return flight || (after !== undefined && closed < 0);
}

/** m to spare as motion planning certified it, what tape and data sheet leave open taken off; ends where nothing was decided. */
export function plannedSpare(way: Way, rec: WorkingRecorder): Range {
  const { answer, spare } = required(way.planned);
  if (answer === 'unknown') return unresolved('out-of-range', `routes.passages.${way.passage}`);
  const likely = answer === 'passes' ? spare.low : Math.min(spare.high, 0);
  rec.step('spare', 'table', { low: spare.low, high: spare.high }, likely, 'm', 'access.motion');
  return { low: likely - way.doubt, likely, high: likely + way.doubt };
}

const sideWords = { width: 'width', depth: 'depth', height: 'height' } as const;

/** What words need of it: how it goes, what would do where it does not, and which other units do. */
export function plannedFacts(way: Way, { ways }: AccessResult): Record<string, string | number> {
  const others = ways.ok
    ? ways.value.filter((w) => w.passage === way.passage && w.piece === way.piece && passesAnyhow(w))
    : [];
  const part =
    ways.ok &&
    ways.value.some(
      (w) => w.candidate === way.candidate && w.passage === way.passage && w.piece === 'handlerPart' && passesAnyhow(w),
    );
  const names = { others: others.map((w) => w.unit).join('; '), part: part && way.piece === 'handler' ? 1 : 0 };
  if (!way.planned.ok) return names;
  const { proof, answer, headroom, opening, stages } = way.planned.value;
  const [first] = stages;
  return {
    ...names,
    planned: answer,
    proof,
    ...(first ? { along: sideWords[first.sides[0]], view: first.view } : {}),
    ...(first?.tilted === undefined ? {} : { tilted: first.tilted }),
    ...(headroom === undefined ? {} : { headroomPlanned: headroom }),
    ...(opening ? { plannedLong: opening[0], plannedShort: opening[1] } : {}),
  };
}

/** Whether a piece passes by a closed form or by a certified path. */
export function passesAnyhow(way: Way): boolean {
  if (!way.passing.ok) return false;
  if (way.planned.ok && way.planned.value.answer === 'passes') return true;
  return !plannedFor(way, way.passing.value.spare.likely) && way.passing.value.spare.likely >= 0 && !hungUp(way);
}

/** Goes into the hatch but is proved not to get up under the roof. */
const hungUp = ({ planned }: Way): boolean =>
  planned.ok && planned.value.answer === 'blocked' && planned.value.proof === 'closed';
