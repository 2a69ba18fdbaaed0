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
  'commissioning.log-change': {
    title: 'Ratio of likelihoods over every day, its strength against simulated logs without a change',
    standing: 'definition',
  },
};
