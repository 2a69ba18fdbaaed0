import { fact, nothingToDo, type Say } from '../say.ts';

/** Words for filters. */
export const sayFilters: Readonly<Record<string, Say>> = {
  'filter-loaded': (j, print) => ({
    what: `Loaded with dust to twice its clean pressure, ${print.quantity(fact(j, 'loaded'), 'pressure')} after ${print.quantity(fact(j, 'from'), 'count')} to ${print.quantity(fact(j, 'to'), 'count')} months as houses usually go, the filter brings the static pressure to ${print.value(j)} with ${print.quantity(fact(j, 'flow'), 'flow')} moving; the unit allows ${print.limit(j)}.`,
    why: 'A system that is just right with a new filter is wrong from the second month on.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : fact(j, 'face') > fact(j, 'has') && Number.isFinite(fact(j, 'face'))
          ? `Give the filter a face of about ${print.opening(fact(j, 'face'))} instead of ${print.opening(fact(j, 'has'))}: clean it then takes a fifth of what the unit allows. Two grilles with a filter each are the easy way.`
          : 'The filter is large enough: free the ducts and the return, and change it before it has doubled; a gauge across it tells when.',
  }),
};
