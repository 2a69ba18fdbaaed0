import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { importDataSheet } from './importDataSheet.ts';
import { importLog } from './importLog.ts';
import { importPrices } from './importPrices.ts';
import { importRecorded } from './importRecorded.ts';
import { importWeather } from './importWeather.ts';

const kinds = ['weather', 'recorded', 'datasheet', 'prices', 'log'];

/** `kneewall import KIND FILE --into PROJECT`, several files of recorded years: checks the whole file first; a refused one leaves everything as it was. */
export async function importFile(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      into: { type: 'string' },
      format: { type: 'string' },
      unit: { type: 'string' },
      columns: { type: 'string' },
      map: { type: 'string', multiple: true },
      days: { type: 'string' },
      clock: { type: 'string' },
      decimal: { type: 'string' },
    },
    2,
    args[0] === 'recorded',
  );
  const [kind = '', file = '', ...others] = positionals;
  if (!kinds.includes(kind))
    throw new Refused(`There is nothing to import called "${kind.slice(0, 40)}". There is: ${kinds.join(', ')}.`);
  const { into, format, unit, columns } = values;
  if (into === undefined) throw new Refused('Say which project takes it: --into PROJECT.');
  if (kind !== 'datasheet' && unit !== undefined) throw new Refused('--unit is for a data sheet.');
  if ((kind === 'datasheet' || kind === 'prices') && format !== undefined)
    throw new Refused('--format is for weather.');
  if (kind !== 'prices' && columns !== undefined) throw new Refused('--columns is for prices.');
  if (kind !== 'log' && (values.map ?? values.days ?? values.clock ?? values.decimal) !== undefined)
    throw new Refused('--map, --days, --clock and --decimal are for a log.');
  if (kind === 'log') await importLog(file, into, values);
  else if (kind === 'prices') await importPrices(file, into, columns);
  else if (kind === 'recorded') await importRecorded([file, ...others], into, format);
  else await (kind === 'weather' ? importWeather(file, into, format) : importDataSheet(file, into, unit));
  return exitCodes.nothingFails;
}
