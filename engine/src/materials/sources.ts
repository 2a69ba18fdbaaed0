import { cuttingSources } from '../physics/cutting/index.ts';
import type { Sources } from '../plan/source.ts';
import { pieceSources } from './cutting/sources.ts';

export const sources: Sources = {
  ...cuttingSources,
  ...pieceSources,
  project: { title: 'Entered in the project', standing: 'project' },
  'materials.list': {
    title: 'Everything the trades need, added up; whole pieces beyond what is at hand',
    standing: 'definition',
  },
  'materials.packs': {
    title:
      'Common practice, no source: packs as shops in North America sell them; a pack entered with a price stands before it',
    standing: 'common practice',
  },
  'materials.waste': {
    title: 'Common practice, no source: rigid duct 10 %, tape 15 %, mastic 25 %, cable 10 % or 1.5 m an end',
    standing: 'common practice',
  },
  'materials.straight': {
    title:
      'Common practice, no source: timber in 8, 10, 12 and 16 ft, never joined; pipe and conduit in 10 ft, joined where lengths end; pipe foam in 6 ft, butted and taped wherever a length ends',
    standing: 'common practice',
  },
  'materials.used-up': {
    title: 'Common practice, no source: screws by hanger and joint, straps by metre, sealant by boot',
    standing: 'common practice',
  },
  'materials.days': { title: 'Days counted in the calendar', standing: 'definition' },
};
