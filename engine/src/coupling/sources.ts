import type { Sources } from '../plan/source.ts';

/** Where what needs several trades at once takes its numbers from. */
export const couplingSources: Sources = {
  'coupling.below': {
    title: 'Common practice, no source: a crawl space lies half way between rooms and outdoors',
    standing: 'common practice',
  },
  'coupling.slow-fan': {
    title:
      'Common practice, no source: the fan moves six tenths of its air at the lowest speed where the sheet is silent',
    standing: 'common practice',
  },
  'coupling.cycling': {
    title: '10 CFR 430 appendix M, default loss of a quarter while a unit starts and stops',
    standing: 'from memory',
  },
  'ways.wrap': {
    title: 'International energy code, ducts in attics: R-8',
    edition: '2015 to 2021',
    standing: 'from memory',
  },
  'ways.buried': {
    title: 'International residential code N1103.3.6.1, deeply buried ducts count as R-25',
    standing: 'standard',
  },
  'ways.new-joints': {
    title: 'Common practice, no source: new joints sealed with mastic let out a hundredth in each section',
    standing: 'common practice',
  },
  'ways.kneewall': {
    title:
      'Common practice, no source: a space behind a knee wall lies between an attic and the rooms; all the way in once its slope is insulated and sealed',
    standing: 'common practice',
  },
  'ways.rooms': {
    title:
      'Common practice, no source: small units in the rooms take 15 % less to 15 % more electricity than one unit behind perfect ducts; their own sheets decide',
    standing: 'common practice',
  },
  'ways.costs': {
    title: 'Common practice, no source: what work on ducts costs; get quotes',
    standing: 'common practice',
  },
  'coupling.fan-and-weather': {
    title: 'ASHRAE Fundamentals, a fan that draws and the weather that pushes add up as the root of their squares',
    standing: 'from memory',
  },
};
