import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  'paperwork.authority': {
    title: 'The local authority, and the code and licensing law it applies: they stand above everything here',
    standing: 'maker',
  },
  'paperwork.terms': {
    title: 'The terms of the warranty, policy or programme itself, as they were entered',
    standing: 'maker',
  },
  'paperwork.order': {
    title:
      'Common practice, no source: ask before money is paid, be granted before holes are cut, inspected before covered',
    standing: 'common practice',
  },
  'paperwork.dates': { title: 'Days between two dates of the calendar', standing: 'definition' },
  'paperwork.scope': {
    title:
      'Common practice, no source: a quote that leaves out more than a tenth of the job is no match for a whole one',
    standing: 'common practice',
  },
  'paperwork.life-cost': {
    title:
      'Life-cycle costing in constant money, uniform present value factors (NIST Handbook 135); energy from the years that the plan computes; sheets true to 5 %, as rating programmes allow',
    standing: 'from memory',
  },
};
