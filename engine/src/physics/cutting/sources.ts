/** What the numbers here rest on; a trade takes these into its own sources. */
export const cuttingSources = {
  'cutting.cover': {
    title: 'Gilmore and Gomory, Operations Research 9 (1961) 849-859: patterns by column generation; own exact search',
    standing: 'paper',
  },
  'cutting.dual-feasible': {
    title:
      'Fekete and Schepers, Mathematical Programming 91 (2001) 11-31: bounds by dual-feasible functions, from memory',
    standing: 'from memory',
  },
  'cutting.board': {
    title: 'A board maker’s published fabrication instructions: table of shiplap and V-groove duct in one piece',
    standing: 'maker',
  },
  'cutting.cap': { title: 'Common practice, no source: end caps plug in by half a board', standing: 'common practice' },
  'cutting.bend': { title: 'Arc of the neutral line: general sheet-metal practice', standing: 'definition' },
  'cutting.triangulation': { title: 'Triangles of true length laid flat side by side', standing: 'definition' },
  'cutting.wrap': { title: 'NAIMA duct-wrap stretch-out table, from memory', standing: 'from memory' },
} as const;
