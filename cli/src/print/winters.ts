import { type Printer, printerFor, type Winters } from '@kneewall/engine';
import { monthNames, type System } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;
const days = (n: number): string => `${Math.round(n)} ${Math.round(n) === 1 ? 'day' : 'days'}`;

/** Twenty winters on one's own power, in a few lines. */
export function winterLines(all: Winters, units: System, paint: Paint): string[] {
  const print = printerFor(units);
  const { winters, tenths, generator, months } = all;
  const of = winters.length;
  const over = (column: 'cold' | 'aloneCold', hours: number): string => {
    const n = winters.filter((w) => w[column] > hours).length;
    return `${n === 0 ? 'none' : n} of ${of}`;
  };
  const span = `${monthNames[months[0] ?? 9]} to ${monthNames[months.at(-1) ?? 3]}`;
  const text = [
    `In ${over('cold', 24)} winters (${span}) the house is too cold for more than a day for want of power: for ${Math.round(tenths.cold.median)} hours in the middle winter, ${Math.round(tenths.cold.oneInTen)} in one of ten.`,
    ...(generator ? generatorLines(all, print, over('aloneCold', 168)) : []),
    `Sun gives less than half of what is drawn for up to ${Math.round(tenths.longestDark.median)} days on end in the middle winter, ${Math.round(tenths.longestDark.oneInTen)} in one of ten; without a generator the longest such spell got through without want is ${days(tenths.survivedDark.median)}.`,
    `The cells are too cold to charge on ${Math.round(tenths.coldMornings.median)} mornings of the middle winter, ${Math.round(tenths.coldMornings.oneInTen)} in one of ten.`,
    'The winters are made, not recorded: spells within a month are held against weather files, how rare the rarest winter is nobody has tested.',
  ];
  return [paint(`${of} winters on own power`, 'bold'), ...text.flatMap((line) => wrap(line, width))];
}

function generatorLines({ tenths }: Winters, print: Printer, alone: string): string[] {
  const litres = (amount: number): string => print.inUnit(amount / 1000, 'volume', print.system === 'us' ? 'gal' : 'L');
  return [
    `If the generator never starts, in ${alone} it is too cold for more than a week.`,
    `The generator runs for ${Math.round(tenths.generatorHours.median)} hours and burns ${litres(tenths.litres.median)} in the middle winter, ${Math.round(tenths.generatorHours.oneInTen)} hours and ${litres(tenths.litres.oneInTen)} in one of ten.`,
  ];
}
