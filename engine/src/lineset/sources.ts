import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'lineset.way': {
    title:
      'Common practice, no source: straight stretches, level and upright, 50 mm clear of what is on the wall; pipes leave 0.3 m above the base',
    standing: 'common practice',
  },
  'lineset.limits': { title: 'The maker’s data sheet: lengths and heights of the line', standing: 'maker' },
  'lineset.charge': {
    title: 'Common practice, no source: so much for each metre beyond what the factory filled',
    standing: 'common practice',
  },
  'lineset.tube': { title: 'ASTM B280: copper tube in coils', standing: 'from memory' },
  'lineset.snow': {
    title: 'Common practice, no source: a base 100 mm or more above the deepest snow',
    standing: 'common practice',
  },
  'lineset.clear': { title: 'The maker’s data sheet: clearances', standing: 'maker' },
  'lineset.ice': {
    title: 'Common practice, no source: defrost water falls clear of walks, steps and doors, with 0.3 m beside',
    standing: 'common practice',
  },
  'lineset.drip': {
    title: 'Common practice, no source: not under an eave that drips or slides, 0.8 m from its wall',
    standing: 'common practice',
  },
  'lineset.bend': {
    title: 'Common practice, no source: 100 mm straight out of a coupling, one radius for each bend',
    standing: 'common practice',
  },
  'lineset.spanners': {
    title: 'Common practice, no source: 0.3 m beside couplings for two spanners',
    standing: 'common practice',
  },
  'lineset.hole': {
    title: 'Two circles beside each other pass a round hole as wide as both together',
    standing: 'definition',
  },
  'lineset.loop': {
    title: 'Common practice, no source: spare line as one flat loop of at most three turns, none tighter than its bend',
    standing: 'common practice',
  },
  'lineset.sound': {
    title: 'Sound power over a quarter sphere, ground and wall behind it',
    standing: 'definition',
  },
  'lineset.barrier': {
    title:
      'ISO 9613-2, screening: one edge, ground counted with it, 500 Hz for an A-weighted level; form read in public code',
    edition: '1996',
    standing: 'standard',
  },
  'lineset.night': {
    title: 'WHO, Night noise guidelines for Europe: 40 dB outside at night',
    edition: '2009',
    standing: 'from memory',
  },
  'lineset.room-rule': {
    title: 'IEC 60335-2-40, annex GG: charge and room for refrigerants that burn',
    edition: '2018',
    standing: 'standard',
  },
  'lineset.burns': {
    title: 'Least burning share of refrigerants, ISO 817; for R454B and which do not burn from memory',
    standing: 'from memory',
  },
  'lineset.anchor': {
    title: 'Common practice, no source: a factor of four on what an anchor gives way at',
    standing: 'common practice',
  },
  'lineset.wind': {
    title: 'ASCE 7, other structures; gust and shape factors from memory',
    standing: 'from memory',
  },
};
