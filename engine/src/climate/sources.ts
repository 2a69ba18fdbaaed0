import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'moist-air.atmosphere': {
    title: 'ASHRAE Handbook, Fundamentals, ch. 1, standard atmosphere',
    edition: '2017',
    place: 'table 1',
    standing: 'handbook',
  },
  'climate.assumed': {
    title: 'Common practice, no source: months guessed from a cold night and a hot afternoon',
    standing: 'common practice',
  },
  'climate.turbidity': {
    title: 'Common practice, no source: Linke turbidity 3.5 on a clear summer day',
    standing: 'common practice',
  },
  'climate.scatter': {
    title: 'Spread of daily means within a month, read off typical-year files',
    standing: 'common practice',
  },
  'climate.cold-night': {
    title: 'Common practice, no source: a cold night lies 5 to 22 K below the coldest month',
    standing: 'common practice',
  },
  'climate.settled': {
    title: 'Common practice, no source: 4 K of doubt about the cold night moves a load by a tenth',
    standing: 'common practice',
  },
  'sky.clark-allen': {
    title: 'Clark and Allen, emittance of a clear sky and of cloud',
    edition: '1978',
    standing: 'from memory',
  },
  'sky.cloud-of-diffuse': {
    title: 'Kasten and Czeplak, diffuse share of the light by cover',
    edition: '1980',
    standing: 'from memory',
  },
  'sky.cloud-carried': {
    title: 'Common practice, no source: cloud of the middle of the day carried over the night on a straight line',
    standing: 'common practice',
  },
  'sun.position': { title: 'Meeus, Astronomical Algorithms, ch. 25', standing: 'from memory' },
  'sun.clear-sky': { title: 'Ineichen and Perez, clear sky with Linke turbidity', edition: '2002', standing: 'paper' },
  'sun.design-day': {
    title: 'ASHRAE Handbook, Fundamentals, ch. 14, daily temperature shape',
    standing: 'from memory',
  },
  'climate.persistence': {
    title: 'Day-to-day ties of weather, set to those of the files in validation/weather-files',
    standing: 'project',
  },
  'climate.winter-ties': {
    title: 'Ties of warmth, clearness and wind from day to day, read off the files in validation/weather-files',
    standing: 'project',
  },
  'climate.monthly-spread': {
    title: 'Erbs, Klein and Beckman, spread of monthly mean temperatures from year to year',
    edition: '1983',
    standing: 'from memory',
  },
  'climate.year-to-year': {
    title:
      'Common practice, no source, not validated: a month’s sun differs by a tenth from year to year, its wind by an eighth, and three tenths of a departure go over into the next month',
    standing: 'common practice',
  },
  'climate.winters': {
    title:
      'Vector autoregression of daily warmth, clearness and wind, held against weather files within months; rare winters not validated',
    standing: 'project',
  },
  'climate.recorded': {
    title:
      'Recorded years imported into the project; common practice, no source: a station within 50 km stands for the house',
    standing: 'project',
  },
  'climate.synthetic': {
    title:
      'Daily clearness by Bendt, Collares-Pereira & Rabl 1981, tied from day to day as in Graham, Hollands & Huget 1988',
    standing: 'from memory',
  },
};
