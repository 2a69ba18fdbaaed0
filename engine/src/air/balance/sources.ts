import type { Sources } from '../../plan/source.ts';

export const balanceSources: Sources = {
  'air.balance': {
    title:
      'Proportional balancing: every outlet within a tenth of its share, one damper open. Test-and-balance practice; a damper’s angle by the butterfly table',
    standing: 'from memory',
  },
};
