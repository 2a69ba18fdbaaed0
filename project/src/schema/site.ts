import { blob, choice, group, map, quantity, text } from './field.ts';

const weatherColumn = (label: string) =>
  group({ name: text({ label: 'Column' }), unit: text({ label: 'Unit in the file' }) }, { label });

const weatherFormat = () =>
  choice(
    {
      tmy3: 'TMY3 typical year (CSV)',
      psm3: 'NSRDB PSM year (CSV)',
      'pvgis-csv': 'PVGIS typical year (CSV)',
      'pvgis-json': 'PVGIS typical year (JSON)',
      hourly: 'Hourly table (CSV) with named columns',
    },
    { label: 'Kind of file', default: 'hourly' },
  );

/** Where the house stands and what weather it meets. */
export const site = group(
  {
    units: choice(
      { us: 'Feet, °F, Btu/h', si: 'Metres, °C, watts' },
      { label: 'Units shown', help: 'Only how numbers are shown and typed; nothing stored changes.', default: 'us' },
    ),
    latitude: quantity('angle', {
      label: 'Latitude',
      help: 'North is positive. Read it off any map; two decimals are plenty.',
      neededBy: ['climate'],
      plausible: { min: -70, max: 75 },
      possible: { min: -90, max: 90 },
      usually: 'measured',
    }),
    longitude: quantity('angle', {
      label: 'Longitude',
      help: 'East is positive, west negative.',
      default: 0,
      plausible: { min: -180, max: 180 },
      possible: { min: -180, max: 180 },
      usually: 'measured',
    }),
    elevation: quantity('length', {
      label: 'Height above sea level',
      help: 'Thin air carries less heat: a hundred metres (300 ft) either way do not matter.',
      neededBy: ['climate'],
      plausible: { min: -100, max: 4000 },
      possible: { min: -450, max: 9000 },
      usually: 'measured',
    }),
    timeZone: quantity('number', {
      label: 'Hours from Greenwich, standard time',
      help: 'Without daylight saving: -5 for New York. Left empty it follows from the longitude.',
      neededBy: [],
      plausible: { min: -12, max: 14 },
      usually: 'measured',
    }),
    coast: choice(
      { coast: 'On the coast or an island', inland: 'Inland' },
      { label: 'Coast or inland', help: 'The sea evens out the seasons and the days.', default: 'inland' },
    ),
    shelter: choice(
      {
        none: 'Nothing stops the wind',
        light: 'A few trees, no close neighbours',
        moderate: 'Trees or houses across the way',
        heavy: 'Houses or woods all round',
        dense: 'Built up close on every side',
      },
      { label: 'Shelter from the wind', default: 'moderate' },
    ),
    coldNight: quantity('temperature', {
      label: 'Coldest normal night',
      help: 'Not the record: the temperature you see on a few nights of an ordinary winter.',
      neededBy: ['climate'],
      plausible: { min: -45, max: 15 },
      possible: { min: -90, max: 40 },
      usually: 'estimated',
    }),
    hotAfternoon: quantity('temperature', {
      label: 'Hottest normal afternoon',
      help: 'Not the record: what you see on a few afternoons of an ordinary summer.',
      neededBy: ['climate'],
      plausible: { min: 10, max: 48 },
      possible: { min: -30, max: 60 },
      usually: 'estimated',
    }),
    designHeating: quantity('temperature', {
      label: 'Winter design temperature',
      help: 'If the local authority prescribes one. It stands above the coldest normal night.',
      neededBy: [],
      plausible: { min: -45, max: 15 },
      possible: { min: -90, max: 40 },
      usually: 'nameplate',
    }),
    groundReflectance: quantity('fraction', {
      label: 'Ground brightness',
      help: 'Grass sends back about 20 % of the light; old snow 50, fresh snow 80.',
      default: { low: 0.15, likely: 0.2, high: 0.3 },
      plausible: { min: 0.05, max: 0.9 },
      possible: { min: 0, max: 1 },
      usually: 'assumed',
    }),
    horizon: map(
      {
        azimuth: quantity('angle', {
          label: 'Direction',
          help: 'Compass direction you look to: north 0, east 90, south 180, west 270.',
          neededBy: ['loads'],
          plausible: { min: 0, max: 360 },
          possible: { min: -360, max: 360 },
          usually: 'measured',
        }),
        height: quantity('angle', {
          label: 'Height of what stands there',
          help: 'Degrees above the level: hills, woods, houses. A fist at arm’s length is about 10.',
          default: 0,
          plausible: { min: 0, max: 60 },
          possible: { min: 0, max: 90 },
          usually: 'estimated',
        }),
      },
      {
        label: 'Horizon',
        one: 'Point',
        help: 'What hides the sun far off. Between two points the skyline runs straight; without any it is open.',
      },
    ),
    weather: group(
      {
        blob: blob({ label: 'File' }),
        name: text({ label: 'Name of the file' }),
        format: weatherFormat(),
        columns: group(
          {
            dryBulb: weatherColumn('Air temperature'),
            dewPoint: weatherColumn('Dew point'),
            relativeHumidity: weatherColumn('Relative humidity'),
            pressure: weatherColumn('Pressure'),
            windSpeed: weatherColumn('Wind speed'),
            windDirection: weatherColumn('Wind direction'),
            ghi: weatherColumn('Sun on the level'),
            dni: weatherColumn('Direct sun'),
            dhi: weatherColumn('Sky light'),
          },
          { label: 'Columns', help: 'Which column of an hourly table holds what, and in which unit.' },
        ),
      },
      {
        label: 'Weather file',
        help: 'Import a typical year; until then the climate is assumed from the answers above.',
      },
    ),
    recorded: map(
      {
        blob: blob({ label: 'File' }),
        name: text({ label: 'Name of the file' }),
        format: weatherFormat(),
      },
      {
        label: 'Recorded years',
        one: 'Recorded year',
        help: 'Years that were measured near the house, one file each: own power is then run through their winters. Hourly tables have the columns of the weather file.',
      },
    ),
    normals: map(
      {
        month: quantity('count', {
          label: 'Month',
          neededBy: ['climate'],
          plausible: { min: 1, max: 12 },
          possible: { min: 1, max: 12 },
          usually: 'nameplate',
        }),
        mean: quantity('temperature', {
          label: 'Mean temperature',
          neededBy: ['climate'],
          plausible: { min: -40, max: 42 },
          usually: 'nameplate',
        }),
        dailyRange: quantity('temperature-difference', {
          label: 'Day to night range',
          default: { low: 6, likely: 10, high: 15 },
          plausible: { min: 1, max: 30 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
        humidity: quantity('relative-humidity', {
          label: 'Relative humidity',
          default: { low: 0.5, likely: 0.65, high: 0.85 },
          plausible: { min: 0.05, max: 1 },
          possible: { min: 0, max: 1 },
          usually: 'nameplate',
        }),
        wind: quantity('velocity', {
          label: 'Wind speed',
          default: { low: 2, likely: 3.5, high: 6 },
          plausible: { min: 0, max: 20 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
        clearness: quantity('fraction', {
          label: 'Clearness',
          help: 'Sun that reaches the ground, as a share of what arrives above the air.',
          default: { low: 0.35, likely: 0.5, high: 0.6 },
          plausible: { min: 0.1, max: 0.8 },
          possible: { min: 0, max: 1 },
          usually: 'nameplate',
        }),
      },
      { label: 'Monthly normals', one: 'Month', help: 'Twelve rows from a published table, where no file can be had.' },
    ),
  },
  { label: 'Site' },
);
