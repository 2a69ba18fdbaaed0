import { asked, type Problem, refused } from '@kneewall/project';
import { standardPressure } from '../../physics/air/index.ts';
import { newYear } from '../../physics/calendar.ts';
import { sunPosition } from '../../physics/sun/index.ts';
import { clockProblem } from './clock.ts';
import { type WeatherColumn, weatherColumns } from './rows.ts';
import type { WeatherYear } from './weatherYear.ts';
import { wrongUnits } from './wrongUnit.ts';

/** What can be, by definition or on this earth. */
const possible: Readonly<Record<WeatherColumn, readonly [number, number]>> = {
  dryBulb: [-90, 62],
  dewPoint: [-100, 45],
  relativeHumidity: [0, 1.1],
  pressure: [45_000, 110_000],
  windSpeed: [0, 110],
  windDirection: [-360, 720],
  ghi: [-15, 1600],
  dni: [-15, 1500],
  dhi: [-15, 1200],
};

/** Everything wrong with a year that is complete: impossible numbers, the wrong unit, a shifted clock, another height. */
export function inspectYear(year: WeatherYear): Problem[] {
  const units = wrongUnits(year);
  if (units.some((p) => p.grade === 'refused')) return units;
  const impossible = weatherColumns.flatMap((c) => impossibleIn(year, c));
  if (impossible.length > 0) return impossible;
  return [...units, clockProblem(year), otherElevation(year)].filter((p) => p !== undefined);
}

function impossibleIn(year: WeatherYear, column: WeatherColumn): Problem[] {
  const [min, max] = possible[column];
  const at = year[column].findIndex((x) => !(x >= min && x <= max));
  if (at < 0) return [];
  const found = year[column][at];
  return [
    refused('impossible-value', ['row', at + 1, column], 'Mend or replace this number, or get the file again.', {
      found: Number.isFinite(found) ? found : 'no number',
      allowed: { min, max },
    }),
  ];
}

/** Sun on the level must be sky light plus direct sun at the sun's height; a shifted clock breaks that. Source: `climate.closure`. */
export function closureResidual(year: WeatherYear, shiftMinutes: number, stride = 1): number {
  let sum = 0;
  let count = 0;
  const start = newYear - year.timeZone * 3600 + year.sunOffset + shiftMinutes * 60;
  for (let i = 0; i < year.ghi.length; i += stride) {
    const ghi = year.ghi[i] ?? 0;
    if (ghi <= 0) continue;
    const { zenith } = sunPosition({
      time: start + i * year.stepSeconds,
      latitude: year.latitude,
      longitude: year.longitude,
    });
    const beam = (year.dni[i] ?? 0) * Math.max(0, Math.cos((zenith * Math.PI) / 180));
    sum += (ghi - (year.dhi[i] ?? 0) - beam) ** 2;
    count++;
  }
  return count === 0 ? 0 : Math.sqrt(sum / count);
}

/** Air pressure tells the height to within a few hundred metres. */
function otherElevation(year: WeatherYear): Problem | undefined {
  const mean = year.pressure.reduce((a, b) => a + b, 0) / year.pressure.length;
  const expected = standardPressure(year.elevation);
  if (Math.abs(mean / expected - 1) < 0.03) return undefined;
  return asked(
    'elevation-mismatch',
    ['elevation'],
    'The air pressure in the file belongs to another height than it states. Check the place.',
    { found: Math.round(mean), allowed: Math.round(expected) },
  );
}
