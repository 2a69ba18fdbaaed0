import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  'equipment.sheet': { title: 'The unit’s own data sheet, read between its rows', standing: 'maker' },
  'equipment.altitude': {
    title:
      'Common practice, no source: capacity falls by about half of the missing air density; the maker’s table stands above',
    standing: 'common practice',
  },
  'equipment.defrost': {
    title: '10 CFR 430, appendix M: capacity × 0.90 and power × 0.985 at 35 °F, none at 17 and 45 °F',
    standing: 'from memory',
  },
  'equipment.coil': { title: 'Bypass-factor method: apparatus dew point, NTU with the flow', standing: 'from memory' },
  'equipment.cycling': {
    title: 'Common practice, no source: stop and start in no more than a third of the heating hours',
    standing: 'common practice',
  },
  'equipment.covers': { title: 'The unit alone holds the design night', standing: 'common practice' },
  'equipment.supply': {
    title: 'The nameplate against the supply: voltage within 10 %, phases, frequency',
    standing: 'common practice',
  },
  'equipment.inverter': {
    title: 'The inverter’s continuous rating carries everything that runs at once',
    standing: 'maker',
  },
  'equipment.standing': {
    title: 'Common practice, no source: 1.5 kWh a day for what never rests',
    standing: 'common practice',
  },
};
