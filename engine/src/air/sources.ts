import type { Sources } from '../plan/source.ts';
import { balanceSources } from './balance/sources.ts';
import { registerSources } from './registers/sources.ts';
import { sizingSources } from './sizing/sources.ts';

export const sources: Sources = {
  ...balanceSources,
  ...registerSources,
  ...sizingSources,
  'air.static': { title: 'The unit’s data sheet: most external static pressure', standing: 'maker' },
  'air.flows': {
    title: 'Blower, filter, ducts and registers solved together; flows balance to 1e-9',
    standing: 'definition',
  },
  'air.network': {
    title: 'Air goes round: from the unit through runs and registers to the rooms, and through grilles and runs back',
    standing: 'definition',
  },
  'air.operating-points': {
    title: 'The blower’s curve against the ducts, scanned over its whole table',
    standing: 'definition',
  },
  'air.sheet-flow': { title: 'The unit’s data sheet: airflow its capacities are stated for', standing: 'maker' },
  'air.room-share': {
    title: 'Common practice, no source: a room is held within a fifth of its share',
    standing: 'common practice',
  },
  'air.return-share': {
    title: 'Common practice, no source: return and filter take no more than half of the pressure',
    standing: 'common practice',
  },
  'air.filter-velocity': { title: 'Residential duct practice: 300 fpm at a filter’s face', standing: 'from memory' },
  'air.velocity': {
    title: 'Residential duct practice: supply 900 fpm in metal and 700 in flexible, return 700',
    standing: 'from memory',
  },
  'air.face-velocity': {
    title: 'Residential duct practice: 500 fpm at a return grille, 700 at a register',
    standing: 'from memory',
  },
  'air.insulation': {
    title: 'Energy code of many places: R-8 round ducts in an attic; the local code stands above',
    edition: 'IECC 2015 to 2021',
    standing: 'from memory',
  },
  'air.leakage': {
    title: 'Common practice, no source: sealed ducts lose no more than 6 % of the air',
    standing: 'common practice',
  },
  'air.leak-test': {
    title:
      'Residential code, ducts tested when finished: 4 cfm at 25 Pa for each 100 ft² of floor; leaks grow with pressure to the power 0.65',
    edition: 'IRC 2018 N1103.3.4; the local code stands above',
    standing: 'standard',
  },
  'air.hangers': {
    title:
      'Flexible duct makers’ installation standard: hangers at most 4 ft apart; SMACNA 1995 allows up to 10 ft where the maker does',
    standing: 'from memory',
  },
  'air.sag': {
    title: 'SMACNA HVAC Duct Construction Standards S3.36: sag at most 1/2 in for each foot between hangers',
    edition: '1995',
    standing: 'standard',
  },
  'air.plenum': {
    title: 'Common practice, no source: at least 18 in of plenum before the first take-off',
    standing: 'common practice',
  },
  'air.tight-bend': {
    title: 'Flexible duct makers’ installation standard: bends no tighter than one diameter along the middle',
    standing: 'from memory',
  },
  'air.duct-heat': {
    title: 'Heat along a run: exponential approach to the place it runs through',
    standing: 'definition',
  },
  'air.attic-takes': {
    title: 'Common practice, no source: the attic should take no more than 15 %',
    standing: 'common practice',
  },
  'air.rooms-follow': {
    title: 'Common practice, no source: no room should be a degree too cold for more than one hour in twenty',
    standing: 'common practice',
  },
  'air.where-built': {
    title:
      'The year run with the unit in each place; 15 % is common practice, and so is what knee walls and room units take',
    standing: 'common practice',
  },
  'air.ducts-stay': {
    title: 'Common practice, no source: ducts may stay where they carry 85 % of what the unit’s sheet is stated for',
    standing: 'common practice',
  },
  'air.ducts-year': {
    title: 'The year run twice, with these ducts and with ducts that neither leak nor lose; 15 % is common practice',
    standing: 'common practice',
  },
  'air.holds-rooms': {
    title: 'What reaches the rooms against what they lose on the cold night',
    standing: 'definition',
  },
  'air.cools-rooms': {
    title: 'What reaches the rooms against what they take in on the hot afternoon',
    standing: 'definition',
  },
  'air.roughness': {
    title: 'ASHRAE Handbook, Fundamentals, duct roughness table',
    edition: '2021',
    standing: 'handbook',
  },
  'air.filter': {
    title: 'Common practice, no source: filter pressure grows with speed to the power 1.3 to 1.6',
    standing: 'common practice',
  },
  'air.filter-change': {
    title: 'Common practice, no source: a filter is changed at twice its clean pressure; months by its thickness',
    standing: 'common practice',
  },
  'air.sizes': { title: 'Common practice, no source: round sizes that shops stock', standing: 'common practice' },
  'flow.colebrook': { title: 'Colebrook and White, friction factor', edition: '1939', standing: 'paper' },
  'flow.darcy': { title: 'Darcy and Weisbach, pressure lost along a duct', standing: 'definition' },
  'flow.fittings': { title: 'Published duct design tables, loss coefficients', standing: 'from memory' },
  'flow.transition': {
    title:
      'Idelchik, Handbook of Hydraulic Resistance: narrowing by area and angle (diagram 5-23), widening of cones and pyramids (5-5); a turn of each side by the mitred bends of duct design tables. Forms read in public code and pages, not in the book',
    edition: '1994',
    standing: 'handbook',
  },
  'flow.flexible-compression': {
    title: 'Abushakra, Walker and Sherman, compression of flexible duct',
    edition: '2004',
    standing: 'paper',
  },
  'flow.flexible-sag': {
    title:
      'Common practice, no source: each sag between hangers as half to two bends of its turn; measured runs on joists (Weaver and Culp; LBNL) give sag and compression together only',
    standing: 'common practice',
  },
  'air.closed-door': {
    title:
      'Residential return-path practice: no more than 3 Pa between a shut bedroom and the hall; orifice law with 0.6',
    standing: 'from memory',
  },
  'air.house-pressure': {
    title:
      'Practice of combustion safety tests: -2 Pa for a draught-hood water heater alone, -5 Pa for a boiler or furnace',
    edition: 'ASTM E1998 class of methods',
    standing: 'from memory',
  },
  'air.weather-cases': {
    title:
      'Doors shut on a calm day, on the cold and still night, and in a fresh breeze (Beaufort 5, 10 m/s at a weather station) from each of four sides; the limits of flues are for what fans add to that',
    standing: 'from memory',
  },
  'air.leak-places': {
    title:
      'Where a house leaks, as the leakage model of ASHRAE Fundamentals takes it: half through walls and windows, the rest through floor and ceiling alike; 0.25 m between storeys is common practice',
    standing: 'from memory',
  },
  'infiltration.stack': { title: 'Weight of warm and cold air, gravity 9.80665 m/s²', standing: 'definition' },
  'infiltration.wind-pressure': {
    title: 'Swami and Chandra, wind pressure on walls of low buildings, mean of the wall, square plan',
    edition: '1987',
    standing: 'paper',
  },
  'air.jacket': {
    title: 'A flat jacket between duct air of 13 °C and the attic’s, against the dew point by ISO 13788',
    standing: 'from memory',
  },
};
