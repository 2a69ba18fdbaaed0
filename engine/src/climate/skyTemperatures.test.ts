import { describe, expect, it } from 'vitest';
import { estimatedCloud, skyTemperatures } from './skyTemperatures.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

/** A year by arithmetic: air 0 °C, dew point -5 °C, no sun. */
function plainYear(more: Partial<WeatherYear> = {}): WeatherYear {
  const of = (x: number) => new Float64Array(8760).fill(x);
  return {
    kind: 'weather-year',
    name: 'By arithmetic',
    format: 'test',
    stepSeconds: 3600,
    latitude: 45,
    longitude: 0,
    elevation: 0,
    timeZone: 0,
    sunOffset: 1800,
    dryBulb: of(0),
    dewPoint: of(-5),
    relativeHumidity: of(0.69),
    pressure: of(101_325),
    windSpeed: of(3),
    windDirection: of(0),
    ghi: of(0),
    dni: of(0),
    dhi: of(0),
    ...more,
  };
}

describe('the temperature of the sky', () => {
  it('is that of a black sky sending the heat the year states', () => {
    // 5.670374e-8 × 260⁴ = 259.122 W/m² by hand.
    const year = plainYear({ skyInfrared: new Float64Array(8760).fill(259.122), cloud: new Float64Array(8760) });
    expect(skyTemperatures(year)[100]).toBeCloseTo(260 - 273.15, 3);
  });

  // Clark and Allen at 0 °C with dew point -5 °C: clear -17.0032 °C, half covered -13.2752 °C (computed from the formula).
  it.each([
    [0, -17.0032],
    [0.5, -13.2752],
  ])('is Clark and Allen’s at cover %s: %s °C', (cover, expected) => {
    const cloud = new Float64Array(8760).fill(cover);
    expect(skyTemperatures(plainYear({ cloud }))[4000]).toBeCloseTo(expected, 3);
  });

  it('takes a year without sun as half covered', () => {
    expect(skyTemperatures(plainYear())[0]).toBeCloseTo(-13.2752, 3);
  });

  it('says nothing where the air is no number, and goes on', () => {
    const dryBulb = new Float64Array(8760);
    dryBulb[7] = Number.NaN;
    const sky = skyTemperatures(plainYear({ dryBulb }));
    expect(sky[7]).toBeNaN();
    expect(sky[8]).toBeCloseTo(-13.2752, 3);
  });
});

describe('cloud told from the sun', () => {
  const noonOnly = (share: (day: number) => number) => {
    const [ghi, dhi] = [new Float64Array(8760), new Float64Array(8760)];
    for (let d = 0; d < 365; d++) {
      ghi[d * 24 + 12] = 400;
      dhi[d * 24 + 12] = 400 * share(d);
    }
    return { ghi, dhi };
  };

  it('goes on a straight line from noon to noon where only noon is seen, and round the end of the year', () => {
    const cover = estimatedCloud(plainYear(noonOnly((d) => (d % 2 === 0 ? 0.3 : 1))));
    expect(cover[12]).toBeCloseTo(0, 9);
    expect(cover[24]).toBeCloseTo(0.5, 12);
    expect(cover[36]).toBe(1);
    // Days 364 and 0 are both clear.
    expect(cover[8759]).toBeCloseTo(0, 9);
    expect(cover[0]).toBeCloseTo(0, 9);
  });

  it('bridges a polar night, and stays between nothing and all', () => {
    const cover = estimatedCloud(
      plainYear({
        latitude: 80,
        ...noonOnly((d) => (d > 60 && d < 300 ? 0.65 : 2)),
      }),
    );
    expect([...cover].every((x) => x >= 0 && x <= 1)).toBe(true);
  });
});
