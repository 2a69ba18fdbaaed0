import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  'equipment.sheet': { title: 'The unit’s own data sheet, read between its rows', standing: 'maker' },
  'equipment.learned': {
    title:
      'Heating rows draw as many times their power as a log showed against the plan’s own expectation; above 15 % more wants a reason (common practice, no source)',
    standing: 'common practice',
  },
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
  'equipment.coil-slope': {
    title:
      'Common practice, no source: a compressor gives 1.5 to 4.5 % more for each K its coil is warmer, unless the sheet’s own rows tell',
    standing: 'common practice',
  },
  'equipment.coil-reach': {
    title:
      'Common practice, no source: a row tells of half to one and a half of its flow, and 8 K of wet bulb about it',
    standing: 'common practice',
  },
  'equipment.sensible-share': {
    title: 'Common practice, no source: 0.65 to 0.85 of the cooling is sensible where a sheet does not say',
    standing: 'common practice',
  },
  'equipment.standard-air': {
    title:
      'AHRI 210/240: airflow is stated as standard air, 1.204 kg/m³; capacities are net of the indoor blower’s heat',
    standing: 'from memory',
  },
  'equipment.fan-heat': {
    title: 'What a blower draws ends as heat in its air; power falls with the density (fan laws)',
    standing: 'from memory',
  },
  'equipment.constant-airflow': {
    title:
      'Common practice, no source: a blower that holds its airflow does so within a twentieth, to its static limit',
    standing: 'common practice',
  },
  'equipment.cycling': {
    title: 'Common practice, no source: stop and start in no more than a third of the heating hours',
    standing: 'common practice',
  },
  'equipment.helped': {
    title: 'Common practice, no source: help in no more than one heating hour in twenty',
    standing: 'common practice',
  },
  'equipment.us-season': {
    title: 'AHRI 210/240 and 10 CFR 430, appendices M and M1: bins of region IV, variable or single speed',
    standing: 'from memory',
  },
  'equipment.europe-season': {
    title: 'EN 14825: hours by bin of the average climate; taken to meet its load at -7 °C and no more',
    standing: 'from memory',
  },
  'equipment.own-season': {
    title: 'The bin method over the project’s own year; stopping and starting costs 10 to 35 % at no load',
    standing: 'project',
  },
  'equipment.field': {
    title: 'US field reports 2015 to 2022: 10 to 30 % below the rated seasonal figure; weak',
    standing: 'from memory',
  },
  'equipment.muggy': {
    title:
      'Common practice, no source: a muggy day asks for half of the hot afternoon’s sensible cooling and all of its drying',
    standing: 'common practice',
  },
  'equipment.muggy-leaks': {
    title:
      'Air and its vapour mixed by mass: what leaking returns draw in is as damp as outdoors, as open attics and crawl spaces are',
    standing: 'definition',
  },
  'equipment.gaps': {
    title: 'The rows that each answer needs; heat above the electricity drawn, and less efficient the colder it is',
    standing: 'definition',
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
