import type { Sources } from '../../plan/source.ts';

export const logSources: Sources = {
  'commissioning.log-fit': {
    title:
      'Least squares of daily means (energy signature), intervals from days drawn again in blocks (Künsch 1989), widened by 10 % with wind and 15 % without: what fits missed on this program’s own houses',
    standing: 'from memory',
  },
  'commissioning.log-days': {
    title:
      'Common practice: two weeks at least, with mild and hard days among them; the fit refuses what simulation showed to be weak',
    standing: 'common practice',
  },
  'commissioning.log-power': {
    title: 'Common practice: defrost, sensors and part load explain some 15 %; more wants a reason',
    standing: 'common practice',
  },
  'commissioning.log-beside': {
    title:
      'Definition: the whole house’s power less the unit’s, means of whole days; interval from the scatter of weeks',
    standing: 'definition',
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
