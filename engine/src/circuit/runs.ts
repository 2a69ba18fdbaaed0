import type { Range } from '@kneewall/project';
import { type Noted, noting, silent } from '../plan/noting.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { Working } from '../plan/working.ts';
import { ambientOf, type Upstream } from './ambient.ts';
import { disconnectOf, groundOf, sightOf } from './atUnit.ts';
import { ampacityOf, byAmpacity, dropOf, gaugeIn, type Line, type Lying, picked } from './conductor.ts';
import { conduitOf } from './conduit.ts';
import { type Electrics, ratingOf, recordLeast, recordMost } from './rating.ts';
import type { Rating, Run, RunId } from './result.ts';
import type { RunInput } from './runInput.ts';
import { startingShare } from './starting.ts';
import { standardBelow } from './wires/protection.ts';

/** What a run hangs on beside its own fields. */
export type RunAbout = {
  readonly electrics: Electrics;
  readonly line: Omit<Line, 'metal'>;
  readonly dropMost: number;
  readonly upstream: Upstream;
};

/** House cable and cable for wet places count as 60 °C at their ends; only house cable may be corrected from 90 °C. */
function lyingOf(run: RunInput, s: Scenario): Lying {
  const laid = s.choice(run.laid);
  return {
    metal: s.choice(run.metal),
    insulation: laid === 'outdoor' ? 60 : 90,
    terminals: laid === 'pipe' && s.choice(run.terminals) === 'warm' ? 75 : 60,
    together: s.of(run.together),
  };
}

/** One circuit: conductor, protection, ground, disconnect, drop. What is not known blinds only what hangs on it. */
export function runOf(id: RunId, input: RunInput, about: RunAbout, workings: Record<string, Working>): Run {
  const s = scenario();
  const noted = noting('circuit', workings, `:${id}`);
  const lying = lyingOf(input, s);
  const line: Line = { ...about.line, metal: lying.metal };
  const rating = attempt(() => ratingOf(id, about.electrics));
  const length = attempt(() => lengthOf(input));
  const ambient = attempt(() => ambientOf(input, about.upstream, silent));
  const thinnest = attempt(() => byAmpacity(required(rating), required(ambient), lying, input.ambient.path));
  const conductor = attempt(() => {
    const own = s.maybe(input.size);
    if (own !== undefined && !(own > 0)) return unresolved('out-of-range', input.size.path);
    if (own !== undefined) return { area: own, ...gaugeIn(own, line.metal), own: true };
    const known = length.ok ? length.value : undefined;
    return picked(required(thinnest), line, required(rating).current, known, about.dropMost);
  });
  const protection = protectionOf(id, input, about.electrics, rating, noted);
  const ground = groundOf(input, { metal: line.metal, conductor, thinnest, protection }, noted);
  return {
    id,
    metal: line.metal,
    laid: s.choice(input.laid),
    poles: line.phases === 'three' ? 3 : line.voltage < 150 ? 1 : 2,
    rating,
    ambient,
    length,
    conductor,
    ampacity: noted('wire', (recorder) => {
      required(rating);
      recordLeast(id, about.electrics, recorder);
      return ampacityOf(required(conductor), ambientOf(input, about.upstream, recorder), lying, recorder);
    }),
    protection,
    drop: noted('drop', (recorder) =>
      dropOf(required(conductor).area, line, required(rating).current, required(length), recorder),
    ),
    ...(id === 'outdoor' ? startingShare(about.electrics, conductor, length, line, workings) : {}),
    ground,
    ...conduitOf(input, conductor, ground, noted),
    disconnect: disconnectOf(input, rating, noted),
    sight: sightOf(input, noted),
  };
}

function lengthOf({ length }: RunInput): Range {
  if ('missing' in length) return unresolved('missing', length.path);
  return { low: length.low, likely: length.likely, high: length.high };
}

/** The breaker that the person means to use, else the largest standard size that the plate allows. */
function protectionOf(
  id: RunId,
  { protection: own }: RunInput,
  electrics: Electrics,
  rating: Outcome<Rating>,
  noted: Noted,
): Run['protection'] {
  return noted('protection', (recorder) => {
    const { most } = required(rating);
    recordMost(id, electrics, recorder);
    if (!('missing' in own)) {
      recorder.given('I_size', own);
      return { size: own.likely, own: true };
    }
    const size = standardBelow(most);
    recorder.step('I_size', 'table', {}, size, 'A', 'circuit.standard-sizes');
    return { size, own: false };
  });
}
