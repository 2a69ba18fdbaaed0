import { printerFor, type Recorded } from '@kneewall/engine';
import { monthNames, type System } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;

/** Winters that were measured, a line each. */
export function recordedLines({ winters, generator, months }: Recorded, units: System, paint: Paint): string[] {
  const print = printerFor(units);
  const over = (column: 'cold' | 'aloneCold', hours: number): string => {
    const n = winters.filter((w) => w[column] > hours).length;
    return `${n === 0 ? 'none' : n} of ${winters.length} recorded winters`;
  };
  const litres = (amount: number): string => print.inUnit(amount / 1000, 'volume', units === 'us' ? 'gal' : 'L');
  const span = `${monthNames[months[0] ?? 9]} to ${monthNames[months.at(-1) ?? 3]}`;
  const text = [
    `In ${over('cold', 24)} (${span}) the house is too cold for more than a day for want of power.`,
    ...(generator
      ? [`If the generator never starts, in ${over('aloneCold', 168)} it is too cold for more than a week.`]
      : []),
    ...winters.map(
      (w) =>
        `${w.name}: ${Math.round(w.cold)} hours without heat, down to ${print.quantity(w.lowest, 'temperature')}${generator ? `; generator ${Math.round(w.generatorHours)} hours, ${litres(w.litres)}; without it ${Math.round(w.aloneCold)} hours without heat` : ''}.`,
    ),
    'Each file is the end of one winter and the beginning of the next, run as one. They say what has been, not how rare the next is.',
  ];
  return [paint('Recorded winters on own power', 'bold'), ...text.flatMap((line) => wrap(line, width))];
}
