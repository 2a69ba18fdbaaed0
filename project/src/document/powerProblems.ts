import type { Entered } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';
import { asked, type Problem } from './problem.ts';

const likely = (x: Entered | undefined): number | undefined =>
  x === undefined ? undefined : typeof x.value === 'number' ? x.value : x.value.likely;

/** What cannot be so in a power system, field by field valid: each is kept, and the person asked which is right. */
export function powerProblems({ power }: Project): Problem[] {
  return [...hoursOfDay(power), ...chargerOverGenerator(power), ...swapped(power)];
}

type Power = Project['power'];

/** A day has 24 hours, and something is used in one of them: else the usual day counts. */
function hoursOfDay(power: Power): Problem[] {
  const hours = power?.household?.hours;
  if (hours === undefined || (hours.length === 24 && hours.some((x) => x > 0))) return [];
  const mend = 'Give 24 numbers, the first for midnight to one, not all of them 0. Until then a usual day counts.';
  return [asked('implausible', ['power', 'household', 'hours'], mend, { found: hours.length, allowed: 24 })];
}

/** A charger that asks for more than the generator gives. */
function chargerOverGenerator(power: Power): Problem[] {
  const [rated, charging] = [likely(power?.generator?.power), likely(power?.generator?.charging)];
  if (rated === undefined || charging === undefined || rated <= 0 || charging <= rated) return [];
  const mend =
    'The generator cannot give that much: set the charger lower, or it stalls the engine. What it can give counts.';
  return [asked('implausible', ['power', 'generator', 'charging'], mend, { found: charging, allowed: { max: rated } })];
}

/** A generator that would stop before it starts. */
function swapped(power: Power): Problem[] {
  const [start, stop] = [likely(power?.generator?.startBelow), likely(power?.generator?.stopAbove)];
  if (start === undefined || stop === undefined || start < stop) return [];
  const mend = 'It has to stop at a fuller battery than it starts at: the two look swapped.';
  return [asked('implausible', ['power', 'generator', 'stopAbove'], mend, { found: stop, allowed: { min: start } })];
}
