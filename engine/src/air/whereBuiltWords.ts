import { hardSteps } from '../coupling/ways/hardSteps.ts';
import type { WayId } from '../coupling/ways/ways.ts';
import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import type { Say } from './say.ts';

const where: Readonly<Partial<Record<WayId, string>>> = {
  wrapped: 'with every joint sealed and the ducts wrapped',
  buried: 'with ducts deep in the attic’s insulation',
  inside: 'in a closet with all ducts inside the rooms',
  kneewall: 'behind the knee wall',
  rooms: 'as small units in the rooms, without ducts',
};

const hours = (j: Judged, key: string, print: Printer): string =>
  j.facts?.[key] === undefined ? '' : ` and ${print.quantity(numberIn(j, key), 'count')} hours of the generator`;

/** Should this be built, and where? Words for the place of the unit. */
export const whereBuilt: Say = (j, print) => {
  const best = wordsIn(j, 'best') as WayId;
  const money = (key: string): string => print.quantity(numberIn(j, key), 'money');
  const instead = best === 'rooms' ? ' in place of unit and ducts' : ' more';
  const sealing =
    j.facts?.seal === undefined
      ? ''
      : ` Sealing the house alone, with nothing built, takes ${print.quantity(numberIn(j, 'seal'), 'energy')} of heat a year off for about ${money('sealCost')}.`;
  return {
    what: `Where it is drawn ${print.quantity(numberIn(j, 'delivered'), 'fraction')} of the year’s heat reaches the rooms, for ${print.quantity(numberIn(j, 'electricity'), 'energy')} of electricity${hours(j, 'generator', print)}; ${where[best] ?? 'elsewhere'} it would take ${print.quantity(numberIn(j, 'elsewhere'), 'energy')}${hours(j, 'generatorThen', print)}.`,
    why: 'Where the unit stands decides what every winter takes, and it cannot be moved once it is in. What knee walls and room units take is common practice, no more.',
    mend: `${
      j.status === 'ok'
        ? 'No other place does much better.'
        : `Weigh it before you buy: about ${money('costLow')} to ${money('costHigh')}${instead}; hard about it: ${hardSteps[best] ?? 'the work twice'}.`
    }${sealing}`,
    caution:
      'Old attic insulation, tape and duct board may hold asbestos: have them looked at before you touch them. The local code says what may be buried or closed in.',
  };
};
