import type { Given, Missing, Range, ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { Rating, RunId } from './result.ts';
import { minimumAmpacity, mostProtection } from './wires/protection.ts';

export type Electrics = ResolvedProject['candidates'][string]['electrics'];

const entered = (x: Given | Missing): Given | undefined => ('missing' in x ? undefined : x);
const plain = ({ low, likely, high }: Range): Range => ({ low, likely, high });

/** Both ends and the likely value through one function that rises with each input. */
export const eachEnd = (f: (end: keyof Range) => number): Range => ({
  low: f('low'),
  likely: f('likely'),
  high: f('high'),
});

/** What a nameplate asks of a circuit. Ends the attempt where neither its two figures nor the two currents are known. */
export function ratingOf(run: RunId, electrics: Electrics): Rating {
  return run === 'outdoor' ? outdoorRating(electrics) : handlerRating(electrics);
}

function outdoorRating(electrics: Electrics): Rating {
  const own = entered(electrics.ampacityLeast);
  const currents = currentsOf(electrics);
  const most = entered(electrics.protectionMost);
  if (!own && !currents) return unresolved('missing', electrics.ampacityLeast.path);
  if (!most && !currents) return unresolved('missing', electrics.protectionMost.path);
  const least = own ? plain(own) : eachEnd((end) => minimumAmpacity(at(currents, end)));
  return {
    least,
    most: most ? most.low : Math.max(15, mostProtection(at(currents, 'low'), 1.75)),
    current: currents ? eachEnd((end) => at(currents, end).compressor + at(currents, end).rest) : least,
    by: own ? 'nameplate' : 'currents',
    currentBy: currents ? 'currents' : 'ampacity',
  };
}

/** A handler's plate counts its strips, so its least ampacity stands for its current too. */
function handlerRating({ handler }: Electrics): Rating {
  const least = entered(handler.ampacityLeast) ?? unresolved('missing', handler.ampacityLeast.path);
  const most = entered(handler.protectionMost) ?? unresolved('missing', handler.protectionMost.path);
  return { least: plain(least), most: most.low, current: plain(least), by: 'nameplate', currentBy: 'ampacity' };
}

type Currents = { readonly compressor: Range; readonly rest: Range };

/** The compressor and, on the same wires, its fan and a handler fed from it. */
function currentsOf({ compressorCurrent, fanCurrent, handler }: Electrics): Currents | undefined {
  const [compressor, fan, inside] = [entered(compressorCurrent), entered(fanCurrent), entered(handler.current)];
  if (!compressor || !fan) return undefined;
  const fedFromHere = 'choice' in handler.fed && handler.fed.choice === 'outdoor';
  return { compressor, rest: eachEnd((end) => fan[end] + (fedFromHere ? (inside?.[end] ?? 0) : 0)) };
}

const at = (currents: Currents | undefined, end: keyof Range) => ({
  compressor: currents?.compressor[end] ?? 0,
  rest: currents?.rest[end] ?? 0,
});

/** Takes down where the most that the protection may be comes from. */
export function recordMost(run: RunId, electrics: Electrics, recorder: WorkingRecorder): void {
  const most = entered(run === 'outdoor' ? electrics.protectionMost : electrics.handler.protectionMost);
  if (most) recorder.given('I_most', most);
  else mostProtection(at(currentsOf(electrics), 'low'), 1.75, recorder);
}

/** Takes down where the least that the wires must carry comes from. */
export function recordLeast(run: RunId, electrics: Electrics, recorder: WorkingRecorder): void {
  const least = entered(run === 'outdoor' ? electrics.ampacityLeast : electrics.handler.ampacityLeast);
  if (least) recorder.given('I_least', least);
  else minimumAmpacity(at(currentsOf(electrics), 'likely'), recorder);
}
