import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { weatherYear } from './files.ts';
import { source } from './measure.ts';

checkSource(source, 114);

describe('the same year in two layouts', () => {
  it('gives the same numbers', () => {
    const csv = weatherYear('pvgis_tmy_45.000_8.000.csv', 'pvgis-csv');
    const json = weatherYear('pvgis_tmy_45.000_8.000.json', 'pvgis-json');
    for (const key of ['dryBulb', 'relativeHumidity', 'pressure', 'ghi', 'dni', 'dhi', 'windSpeed'] as const)
      expect(csv[key]).toEqual(json[key]);
  });
});
