import {
  effectColumns,
  effectLines,
  heatsWords,
  type LogAnswers,
  type LogEffect,
  printerFor,
  type Taking,
  weakWords,
} from '@kneewall/engine';
import type { Range, System } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;

type Told = {
  readonly name: string;
  readonly found: LogAnswers;
  readonly taken: readonly Taking[];
  readonly effect: LogEffect | undefined;
};

/** What a log taught, what it changes before and after, and what of it is in the plan. */
export function logLines({ name, found, taken, effect }: Told, units: System, paint: Paint): string[] {
  const inPlan =
    taken.length === 0
      ? 'Nothing of a log is in the plan: --accept loss, power, household or all takes it in.'
      : `In the plan: ${inWords(taken)}. --back takes it out again.`;
  return [
    paint(`By the log “${name}”`, 'bold'),
    ...toldLines(found, units).flatMap((line) => wrap(line, width)),
    ...(effect ? ['', ...effectTable(effect, units)] : []),
    '',
    ...wrap(inPlan, width),
  ];
}

const inWords = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

function toldLines(found: LogAnswers, units: System): string[] {
  return [...houseLines(found, units), ...householdLines(found, units)];
}

function householdLines({ beside }: LogAnswers, units: System): string[] {
  const print = printerFor(units);
  const { household } = beside ?? {};
  if (!household) return [];
  const told = `Beside the unit the house takes ${print.quantity(household.daily.likely, 'energy')} a day (${print.range(household.daily, 'energy')}), by ${household.days} days.`;
  return [household.heats ? `${told}${heatsWords}` : told];
}

function houseLines({ house, power, days }: LogAnswers, units: System): string[] {
  const print = printerFor(units);
  const share = (r: Range): string => `${print.quantity(r.likely, 'fraction')} (${print.range(r, 'fraction')})`;
  if ('weak' in house) return [`It says too little: ${weakWords[house.weak]}.`];
  const { lossPerDegree: loss, planned, times } = house;
  return [
    `The house loses ${print.quantity(loss.likely, 'conductance')} for each degree (${print.range(loss, 'conductance')}), by ${days} days.`,
    ...(planned === undefined || !times
      ? []
      : [
          `The plan’s own house in that weather would lose ${print.quantity(planned, 'conductance')}: the log has ${share(times)} of it.`,
        ]),
    ...(power ? [`The unit drew ${share(power)} of what the plan expects for that heat.`] : []),
  ];
}

function effectTable(effect: LogEffect, units: System): string[] {
  const print = printerFor(units);
  return effectLines(effect).flatMap(({ name, kind, of }) => [
    `${name}: ${print.quantity(of(effect.before), kind)} by the plan alone`,
    ...effectColumns.flatMap(([id, head]) => {
      const x = effect[id];
      if (!x) return [];
      const range = { low: of(x.low), likely: of(x.likely), high: of(x.high) };
      const wide = range.low === range.high ? '' : ` (${print.range(range, kind)})`;
      return [`  ${head}: ${print.quantity(range.likely, kind)}${wide}`];
    }),
  ]);
}
