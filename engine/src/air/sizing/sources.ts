import type { Sources } from '../../plan/source.ts';

export const sizingSources: Sources = {
  'air.sizing': {
    title: 'Exact exchange of pressure and cost merged up both trees; held against every choice tried one by one',
    standing: 'definition',
  },
  'air.velocity-role': {
    title: 'Residential duct practice: trunks 700 to 900 fpm, branches 500 to 700; returns 700',
    edition: 'trade-school page read; returns and the difference between rigid and flexible from memory',
    standing: 'from memory',
  },
  'air.sizing-prices': {
    title: 'Common practice, no source: stand-in prices of duct by kind and perimeter; no offer of anybody',
    standing: 'common practice',
  },
  'air.sizing-waste': {
    title: 'Common practice, no source: a tenth more rigid duct is bought than runs, for ends and waste',
    standing: 'common practice',
  },
  'air.space': {
    title: 'Geometry: inner size and insulation on both sides against the clear space entered',
    standing: 'definition',
  },
  'air.sizing-labour': {
    title: 'Common practice, no source: minutes of work by kind, length and perimeter',
    standing: 'common practice',
  },
  'air.sizing-wrap': {
    title: 'Common practice, no source: R-8 duct wrap is 57 mm (2 1/4 in) thick, other values in proportion',
    standing: 'common practice',
  },
  'air.sizing-slack': {
    title: 'Common practice, no source: flexible duct hung with care keeps about 12 % of slack',
    standing: 'common practice',
  },
};
