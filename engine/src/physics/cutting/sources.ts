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
  'cutting.flexible': {
    title:
      'Common practice, no source: flexible duct as long as its way and its slack, and 2 in over each collar; slack as Abushakra, Walker and Sherman define it',
    standing: 'common practice',
  },
  'cutting.splices': {
    title: 'Common practice, no source: no more than one splice in a run of flexible duct; its maker may allow none',
    standing: 'common practice',
  },
  'cutting.cap': { title: 'Common practice, no source: end caps plug in by half a board', standing: 'common practice' },
  'cutting.bend': { title: 'Arc of the neutral line: general sheet-metal practice', standing: 'definition' },
  'cutting.triangulation': { title: 'Triangles of true length laid flat side by side', standing: 'definition' },
  'cutting.cone': {
    title: 'A cone laid flat: arcs about its tip, true length along its slope',
    standing: 'definition',
  },
  'cutting.wrap': { title: 'NAIMA duct-wrap stretch-out table, from memory', standing: 'from memory' },
} as const;
