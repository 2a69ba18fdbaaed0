import type { Sources } from '../../plan/source.ts';

export const pieceSources: Sources = {
  'cutting.stock': {
    title: 'Common practice, no source: board 48 x 120 in, R-4.3, R-6.5 and R-8.7 by thickness; metal sheet 48 x 96 in',
    standing: 'common practice',
  },
  'cutting.spacing': {
    title: 'Common practice, no source: 18 in clear of the unit, 2 in between holes and to edges',
    standing: 'common practice',
  },
  'cutting.ends': {
    title: 'Common practice, no source: a crimp goes 1 1/2 in into the next pipe',
    standing: 'common practice',
  },
  'cutting.board-limits': {
    title:
      'NAIMA AH119, 3rd edition 2002: residential fibrous glass ducts, 125 Pa, sides up to 36 in without reinforcement',
    standing: 'standard',
  },
  'cutting.passing': {
    title: 'Inside size and two thicknesses of board, against what is clear',
    standing: 'definition',
  },
  'cutting.headroom': {
    title: 'Common practice, no source: 4 in over a box to staple and tape its top; its middle as high as the unit’s',
    standing: 'common practice',
  },
  'cutting.slopes': {
    title:
      'SMACNA HVAC Duct Construction Standards, offsets and transitions: 45° in all where a duct widens, 60° where it narrows, half of it to a side',
    edition: '2005, figure 2-7; quoted at second hand',
    standing: 'from memory',
  },
  'cutting.joint-loss': {
    title: 'Common practice, no source: a piece at the unit takes no more than a twentieth of the pressure across it',
    standing: 'common practice',
  },
  'cutting.plan': { title: 'Sheets used less the bound that no plan goes below', standing: 'definition' },
};
