import { numberIn } from '../plan/facts.ts';
import { done, gas, has, likely, type Say } from './saying.ts';

export const sayGrid: Readonly<Record<string, Say>> = {
  'grid-cost': (j, print) => ({
    what: `The unit’s electricity comes to ${Math.round(numberIn(j, 'money'))} of your money in an ordinary year, for ${print.inUnit(numberIn(j, 'unit'), 'energy', 'kWh')}. ${likely(j) >= 0 ? `${print.value(j)} of it` : 'Nothing of it'} comes of dear hours and of the highest power${has(j, 'demand') && numberIn(j, 'demand') > 0.5 ? `, ${Math.round(numberIn(j, 'demand'))} of the latter` : ''}.`,
    why: 'With prices by the hour the same heat costs more on cold evenings, when everybody heats. Worked out as the bill with the unit less the bill without it.',
    mend:
      j.status === 'ok'
        ? done
        : 'Ask for the tariff without hours and compare; seal and insulate first, for that takes off the dear hours too.',
  }),
  'outage-heat': (j, print) => ({
    what: `If the grid fails on the hardest day (${print.quantity(numberIn(j, 'outdoor'), 'temperature')}) at ${Math.round(numberIn(j, 'hour'))}:00, a full battery keeps the heat on for ${print.inUnit(likely(j), 'time', 'h')}; the house falls below ${print.quantity(15, 'temperature')} after ${print.inUnit(numberIn(j, 'warm'), 'time', 'h')} and stands at ${print.quantity(numberIn(j, 'afterDay'), 'temperature')} a day on. Of outages at that hour, one on each of ${numberIn(j, 'starts')} days, ${numberIn(j, 'through8')} keep the heat on for eight hours and ${numberIn(j, 'through24')} for a day.`,
    why: 'Outages come with storms and cold. Without sun, the household on what must not stop; the hour is the hardest of the coldest day, and on all other days that hour is tried alone.',
    mend:
      j.status === 'ok'
        ? done
        : 'Have heat that needs no electricity, such as a stove, know how to drain the pipes, or choose a larger battery.',
    caution: gas,
  }),
};

export const aboutGrid: Readonly<Record<string, string>> = {
  'grid-cost': 'what the unit’s electricity costs',
  'outage-heat': 'how long the heat stays on in an outage',
};

export const aboutHelps: Readonly<Record<string, string>> = {
  'left-undone': 'what single changes would save',
  'unit-choice': 'which candidate lets the generator sleep most',
  'aged-battery': 'what the year comes to when the battery is old',
};
