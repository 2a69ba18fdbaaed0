import type { Sources } from '../plan/source.ts';
import { logSources } from './logs/sources.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'commissioning.first': {
    title: 'Common practice, no source: static pressure, power, supply and return air at the first start',
    standing: 'common practice',
  },
  'commissioning.steady': {
    title: 'California Residential Appendix RA3.2: readings after 15 minutes of steady running',
    edition: '2008',
    standing: 'standard',
  },
  ...logSources,
};
