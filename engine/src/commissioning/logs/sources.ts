import type { Sources } from '../../plan/source.ts';

export const logSources: Sources = {
  'commissioning.log-fit': {
    title:
      'Least squares of daily means (energy signature), intervals from days drawn again in blocks (Künsch 1989), widened by 10 % with wind and 15 % without: what fits missed on this program’s own houses',
    standing: 'from memory',
  },
  'commissioning.log-plan': {
    title:
      'The plan’s own house by its heat balance in the log’s air, wind and sun, kept as warm, fitted to the same days: what it takes more for each degree, shell and leaks at the log’s own wind and degrees, ducts apart. On the cold night it is more: more degrees drive the leaks, and the ground counts',
    standing: 'definition',
  },
  'commissioning.log-unit': {
    title:
      'Power over what the plan’s unit draws for each hour’s heat (sheet, thin air, frost, starts, standby), summed over whole days; intervals from blocks of days left out, widened by 7 % for meters and frost: what this program’s own changed units were missed by',
    standing: 'from memory',
  },
  'commissioning.log-days': {
    title:
      'Common practice: two weeks at least, with mild and hard days among them; the fit refuses what simulation showed to be weak',
    standing: 'common practice',
  },
  'commissioning.log-power': {
    title: 'Common practice: sensors, frost beyond the usual and part load explain some 15 %; more wants a reason',
    standing: 'common practice',
  },
  'commissioning.log-beside': {
    title:
      'The whole house’s power less the unit’s, means of whole days; 90 % for a year’s mean from the scatter of weeks (half as much more, since weeks follow each other), 4 % for two clamps, 15 % for a year that was not logged (lit winters, common practice): holds the truth in nine of ten simulated households',
    standing: 'common practice',
  },
  'commissioning.log-idle': {
    title:
      'Definition: the straight line of the battery’s power by the house’s in hours without sun, where it meets no load. Common practice: a quarter more than a sheet’s idle draw is no fault',
    standing: 'common practice',
  },
  'commissioning.log-change': {
    title: 'Ratio of likelihoods over every day, its strength against simulated logs without a change',
    standing: 'definition',
  },
};
