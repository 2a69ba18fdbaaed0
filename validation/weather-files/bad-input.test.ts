import { readWeather, sniffWeather, type WeatherFormat } from '@kneewall/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weatherText } from './files.ts';

const tmy3 = weatherText('tmy3_703165_sand_point_ak.csv');
const lines = tmy3.split(/\r?\n/);
const read = (text: string, format: WeatherFormat = 'tmy3') => readWeather(text, { format }, undefined);
const codes = (text: string, format?: WeatherFormat) =>
  read(text, format).problems.map((p) => `${p.grade} ${p.code} ${p.path.join('.')}`);
const withLines = (change: (l: string[]) => void): string => {
  const copy = [...lines];
  change(copy);
  return copy.join('\n');
};
/** One column of every row changed; columns by their heading's beginning. */
const mapped = (start: string, change: (x: number) => number, text: string = tmy3): string => {
  const at = (lines[1] ?? '').split(',').findIndex((h) => h.startsWith(start));
  return text
    .split(/\r?\n/)
    .map((line, i) => {
      const cells = line.split(',');
      if (i < 2 || cells.length < 20) return line;
      cells[at] = String(change(Number(cells[at])));
      return cells.join(',');
    })
    .join('\n');
};

describe('a weather file that is not right (made from the file of Sand Point)', () => {
  it.each<[string, string, string]>([
    ['nothing', ' \n', 'refused unknown-format '],
    ['binary', 'PK\u0003\u0000', 'refused not-text '],
    ['cut short', lines.slice(0, 5000).join('\n'), 'refused missing-hours line.5000'],
    ['an hour gone', withLines((l) => l.splice(100, 1)), 'refused missing-hours line.100'],
    ['an hour twice', withLines((l) => l.splice(100, 0, l[100] ?? '')), 'refused duplicate-hours line.102'],
    ['no heading for temperature', tmy3.replace('Dry-bulb (C)', 'Warmth'), 'refused missing-column column.Dry-bulb ('],
    ['Fahrenheit called Celsius', mapped('Dry-bulb (', (c) => c * 1.8 + 32), 'refused wrong-unit dryBulb'],
    [
      'Fahrenheit called Celsius, in the far north',
      mapped(
        'Dew-point (',
        (c) => (c - 12) * 1.8 + 32,
        mapped('Dry-bulb (', (c) => (c - 12) * 1.8 + 32),
      ),
      'refused wrong-unit dryBulb',
    ],
    ['pascal called hectopascal', mapped('Pressure (', (p) => p * 100), 'refused wrong-unit pressure'],
    ['kilopascal called hectopascal', mapped('Pressure (', (p) => p / 10), 'refused wrong-unit pressure'],
    ['a fraction called per cent', mapped('RHum (', (x) => x / 100), 'refused wrong-unit relativeHumidity'],
    ['kilowatts called watts', mapped('GHI (', (x) => x / 1000), 'refused wrong-unit ghi'],
    [
      'latitude and longitude changed about',
      tmy3.replace('55.317,-160.517', '-160.517,55.317'),
      'refused impossible-value latitude',
    ],
    ['the southern half of the earth', tmy3.replace('55.317', '-55.317'), 'ask time-slip latitude'],
    ['a clock seven hours off', tmy3.replace(',-9.0,', ',-2.0,'), 'ask time-slip timeZone'],
    ['a picture', `\u0089PNG\r\n\u001a\n${'\u0001\u0002\uFFFD'.repeat(400)}`, 'refused not-text '],
    ['kelvin called Celsius', mapped('Dry-bulb (', (c) => c + 273.15), 'refused wrong-unit dryBulb'],
    [
      'an impossible wind',
      withLines((l) =>
        l.splice(
          202,
          1,
          (l[202] ?? '')
            .split(',')
            .map((c, i) => (i === 46 ? '900' : c))
            .join(','),
        ),
      ),
      'refused impossible-value row.201.windSpeed',
    ],
    [
      'a text for a number',
      withLines((l) =>
        l.splice(
          300,
          1,
          (l[300] ?? '')
            .split(',')
            .map((c, i) => (i === 31 ? 'warm' : c))
            .join(','),
        ),
      ),
      'refused impossible-value row.299.dryBulb',
    ],
    ['another time zone', tmy3.replace(',-9.0,', ',-7.0,'), 'ask time-slip timeZone'],
    [
      'another height',
      withLines((l) => l.splice(0, 1, (l[0] ?? '').replace(/,7\s*$/, ',1800'))),
      'ask elevation-mismatch elevation',
    ],
  ])('%s', (_name, text, code) => {
    expect(codes(text)).toEqual([code]);
    for (const p of read(text).problems) expect(p.mend.length).toBeGreaterThan(15);
  });

  it('a 29 February is left out, and that is said', () => {
    const psm = weatherText('psm3_2017_30min_40.53_-108.54.csv').split(/\r?\n/);
    const day = psm.filter((l) => l.startsWith('2017,2,28,'));
    const at = psm.lastIndexOf(day.at(-1) ?? '') + 1;
    const leap = day.map((l) => l.replace('2017,2,28,', '2017,2,29,'));
    const text = [...psm.slice(0, at), ...leap, ...psm.slice(at)].join('\n');
    expect(codes(text, 'psm3')).toEqual([`ask leap-day line.${at + 1}`]);
    expect(read(text, 'psm3').value?.dryBulb.length).toBe(17_520);
  });

  it('cloud that is missing in one hour: none of it is used, and that is said', () => {
    const text = withLines((l) =>
      l.splice(
        202,
        1,
        (l[202] ?? '')
          .split(',')
          .map((c, i) => (i === 28 ? '-9900' : c))
          .join(','),
      ),
    );
    expect(codes(text)).toEqual(['ask impossible-value row.201.cloud']);
    expect(read(text).value?.cloud).toBeUndefined();
  });

  it('no column of cloud, or of heat from the sky: the year does without', () => {
    expect(codes(tmy3.replace('OpqCld (', 'Cover ('))).toEqual([]);
    expect(read(tmy3.replace('OpqCld (', 'Cover (')).value?.cloud).toBeUndefined();
    const pvgis = weatherText('pvgis_tmy_45.000_8.000.csv').replace(',IR(h),', ',Other,');
    expect(codes(pvgis, 'pvgis-csv')).toEqual([]);
    expect(read(pvgis, 'pvgis-csv').value?.skyInfrared).toBeUndefined();
  });

  it('PVGIS as JSON, cut short', () => {
    expect(codes(weatherText('pvgis_tmy_45.000_8.000.json').slice(0, 90_000), 'pvgis-json')).toEqual([
      'refused not-json ',
    ]);
  });

  it('a page of the web, whose kind nobody stated', () => {
    const { value, problems } = readWeather('<!doctype html><html><body>Not found</body></html>', {}, undefined);
    expect(value).toBeUndefined();
    expect(problems[0]).toMatchObject({ code: 'unknown-format', grade: 'refused' });
  });

  it.each(['null', '5', '[]', '{"inputs":null,"outputs":{"tmy_hourly":[null,1]}}'])(
    'PVGIS as JSON that holds %s',
    (text) => {
      const { value, problems } = read(text, 'pvgis-json');
      expect(value).toBeUndefined();
      expect(problems.map((p) => p.grade)).toEqual(['refused']);
    },
  );

  it('PVGIS as JSON with a temperature that is null does not read it as zero', () => {
    const text = weatherText('pvgis_tmy_45.000_8.000.json').replace('"T2m": 2.04', '"T2m": null');
    expect(codes(text, 'pvgis-json')[0]).toMatch(/^refused impossible-value row\.\d+\.dryBulb$/);
  });

  it('is never taken for more than it is, and never throws', () => {
    const short = lines.slice(0, 60).join('\n');
    fc.assert(
      fc.property(
        fc.nat(short.length - 1),
        fc.constantFrom('', ',', '"', '\n', '9', '-', 'x', '\uFEFF'),
        fc.constantFrom<WeatherFormat>('tmy3', 'psm3', 'pvgis-csv', 'pvgis-json', 'hourly'),
        (at, piece, format) => {
          const { value, problems } = read(short.slice(0, at) + piece + short.slice(at + 1), format);
          return value === undefined && problems.length > 0;
        },
      ),
      { seed: 20261125, numRuns: 150 },
    );
  });
});

describe('which kind of file it is', () => {
  it.each<[string, WeatherFormat]>([
    ['tmy3_703165_sand_point_ak.csv', 'tmy3'],
    ['tmy3_725650_denver_intl_co.csv', 'tmy3'],
    ['psm3_2017_30min_40.53_-108.54.csv', 'psm3'],
    ['pvgis_tmy_45.000_8.000.csv', 'pvgis-csv'],
    ['pvgis_tmy_45.000_8.000.json', 'pvgis-json'],
  ])('%s is %s', (name, format) => {
    expect(sniffWeather(weatherText(name))).toBe(format);
  });
});

describe('the same file in other clothes', () => {
  const temperatures = (text: string, format?: WeatherFormat) =>
    readWeather(text, format ? { format } : {}, undefined).value?.dryBulb;

  it.each([
    ['a mark of byte order before it', `\uFEFF${tmy3}`],
    ['semicolons and decimal commas', tmy3.replaceAll(',', ';').replaceAll('.', ',')],
    ['tabs', tmy3.replaceAll(',', '\t')],
    ['line ends of an old machine', tmy3.replace(/\r?\n/g, '\r')],
  ])('%s', (_name, text) => {
    expect(temperatures(text)).toEqual(temperatures(tmy3));
  });

  it.each(['psm3_2017_30min_40.53_-108.54.csv', 'pvgis_tmy_45.000_8.000.csv', 'pvgis_tmy_45.000_8.000.json'])(
    '%s with a mark of byte order before it',
    (name) => {
      const text = weatherText(name);
      expect(temperatures(`\uFEFF${text}`)).toEqual(temperatures(text));
    },
  );

  it('NSRDB with its rows in UTC is turned to the clock of the place', () => {
    const text = weatherText('psm3_2017_30min_40.53_-108.54.csv');
    const rows = text.split(/\r?\n/);
    const body = rows.slice(3).filter((l) => l.split(',').length > 5);
    // Row by row the labels stay; what stood at 00:00 of the place stands at 07:00 UTC.
    const turned = body.map((l, i) => {
      const from = body[(i - 14 + body.length) % body.length] ?? '';
      return [...l.split(',').slice(0, 5), ...from.split(',').slice(5)].join(',');
    });
    const utc = [rows[0], rows[1]?.replace('-108.54,-7,2168,-7', '-108.54,0,2168,-7'), rows[2], ...turned].join('\n');
    const { value, problems } = readWeather(utc, {}, undefined);
    expect(problems).toEqual([]);
    expect(value?.timeZone).toBe(-7);
    expect(value?.dryBulb).toEqual(temperatures(text));
  });
});

describe('an hourly table with columns of one’s own (made by arithmetic)', () => {
  const site = {
    latitude: { value: 45, known: 'measured' as const },
    longitude: { value: 0, known: 'measured' as const },
    elevation: { value: 0, known: 'measured' as const },
  };
  const rows = Array.from({ length: 8760 }, (_, i) =>
    [50 + 20 * Math.sin((2 * Math.PI * i) / 8760), 60, 0, 0, 0].join(';'),
  );
  const columns = {
    dryBulb: { name: 'Temp', unit: '°F' },
    relativeHumidity: { name: 'RH', unit: '%' },
    ghi: { name: 'G', unit: 'W/m²' },
    dni: { name: 'B', unit: 'W/m²' },
    dhi: { name: 'D', unit: 'W/m²' },
  };

  it('is read with its separator and its units', () => {
    const { value, problems } = readWeather(
      ['\uFEFFTemp;RH;G;B;D', ...rows].join('\r\n'),
      { format: 'hourly', columns },
      site,
    );
    // The table holds no sun; the person is asked whether that is meant.
    expect(problems).toMatchObject([{ code: 'impossible-value', path: ['ghi'], grade: 'ask' }]);
    expect(value?.dryBulb[0]).toBeCloseTo(10, 10);
    expect(value?.relativeHumidity[8759]).toBeCloseTo(0.6, 12);
  });

  it('asks for a column that is not named', () => {
    const { value, problems } = readWeather(
      ['Temp;RH;G;B;D', ...rows].join('\n'),
      { format: 'hourly', columns: { ...columns, ghi: {} } },
      site,
    );
    expect(value).toBeUndefined();
    expect(problems[0]).toMatchObject({ code: 'missing-column', path: ['columns', 'ghi'] });
  });
});
