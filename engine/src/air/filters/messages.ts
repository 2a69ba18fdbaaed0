import { numberIn } from '../../plan/facts.ts';
import { nothingToDo, type Say } from '../say.ts';

/** Words for filters. */
export const sayFilters: Readonly<Record<string, Say>> = {
  'filter-loaded': (j, print) => ({
    what: `Loaded with dust to twice its clean pressure, ${print.quantity(numberIn(j, 'loaded'), 'pressure')} after ${print.quantity(numberIn(j, 'from'), 'count')} to ${print.quantity(numberIn(j, 'to'), 'count')} months as houses usually go, the filter brings the static pressure to ${print.value(j)} with ${print.quantity(numberIn(j, 'flow'), 'flow')} moving; the unit allows ${print.limit(j)}.`,
    why: 'A system that is just right with a new filter is wrong from the second month on.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : numberIn(j, 'face') > numberIn(j, 'has') && Number.isFinite(numberIn(j, 'face'))
          ? `Give the filter a face of about ${print.opening(numberIn(j, 'face'))} instead of ${print.opening(numberIn(j, 'has'))}: clean it then takes a fifth of what the unit allows. Two grilles with a filter each are the easy way.`
          : 'The filter is large enough: free the ducts and the return, and change it before it has doubled; a gauge across it tells when.',
  }),
};
