import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'schedule.plan': {
    title:
      'Scheduling under limited resources: serial generation, bounds, exact search; checked on published instances (PSPLIB)',
    standing: 'paper',
  },
  'schedule.check': {
    title: 'Every minute of the plan held against windows, people and order',
    standing: 'definition',
  },
  'schedule.heat': {
    title: 'Minutes of work an hour by the heat index of the attic on a hot day of the month (see Access)',
    standing: 'standard',
  },
  'schedule.lives': {
    title:
      'A thousand lives of the plan, lengths drawn from their three points (PERT), each part planned with the time that four of five stay within; limits and margin: common practice, no source',
    standing: 'common practice',
  },
  'schedule.pace': {
    title: 'Common practice, no source: new to it half as long again, practised a fifth less',
    standing: 'common practice',
  },
};
