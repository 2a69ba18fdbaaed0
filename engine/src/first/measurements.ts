import type { Driver } from '../plan/scenario.ts';

/** How an unknown is settled, and about how long that takes. Common practice, no source. */
export type Measurement = {
  readonly path: string;
  readonly how: string;
  readonly minutes?: number;
  readonly reach: number;
};

const ways: Readonly<Record<string, { readonly how: string; readonly minutes: number }>> = {
  'house.draught': { how: 'Have a blower-door test made', minutes: 120 },
  'house.airtightness': { how: 'Repeat the blower-door test', minutes: 120 },
  'house.era': { how: 'Find out when the house was built: deed, tax record, neighbours', minutes: 15 },
  'house.era#window': { how: 'Look at every window: one, two or three panes', minutes: 10 },
  'house.era#wall': {
    how: 'Circuit off, take an outlet cover off an outside wall, look what fills the wall',
    minutes: 15,
  },
  'house.era#ceiling': { how: 'Look through the hatch and measure how deep the insulation lies', minutes: 15 },
  'house.era#floor': { how: 'Look under the floor for what hangs between the joists', minutes: 15 },
  'house.openings#area': { how: 'Measure the width and height of every window', minutes: 40 },
  'house.openings#sun': { how: 'Read the labels of the windows and note what shades them', minutes: 20 },
  'site.coldNight': { how: 'Ask two neighbours, or the nearest weather office, about ordinary winters', minutes: 20 },
  'site.hotAfternoon': {
    how: 'Ask two neighbours, or the nearest weather office, about ordinary summers',
    minutes: 20,
  },
  'site.shelter': { how: 'Walk round the house and note what stands within ten heights of it', minutes: 10 },
  'house.fuel.energy': { how: 'Add up last winter’s receipts, or measure the stack against a full one', minutes: 20 },
  'house.fuel.efficiency': { how: 'Read the plate of the stove or boiler and look up its efficiency', minutes: 15 },
  'house.fuel.indoor': { how: 'Ask all who lived there how warm each room was kept, nights too', minutes: 10 },
  'house.fuel.energy#winter': { how: 'Look up last winter’s degree days and those of a usual winter', minutes: 20 },
  'house.people.count': { how: 'Count who was at home last winter', minutes: 2 },
  'house.people.appliances': { how: 'Read the electricity meter a day apart', minutes: 10 },
  'house.roof.pitch': { how: 'Hold a level and a tape to a rafter', minutes: 10 },
};

/** Ways for fields that stand in a list, by the last words of their path. */
const waysByField: readonly (readonly [RegExp, { readonly how: string; readonly minutes: number }])[] = [
  [
    /\.glazing#u$/,
    { how: 'Look for the label or count the panes; hold a lighter to the glass and count its images', minutes: 5 },
  ],
  [/\.glazing#sun$/, { how: 'Read the label on the glass, or its order', minutes: 5 }],
  [/\.(common|uValue)$/, { how: 'Open it at one place and measure what insulates', minutes: 20 }],
  [/layers\.[^.]+\.(thickness|resistance)$/, { how: 'Push a ruler into it at three places', minutes: 10 }],
  [/layers\.[^.]+\.conductivity$/, { how: 'Take a handful out and look what it is', minutes: 10 }],
  [/\.absorptance$/, { how: 'Hold a sheet of white paper and a black one beside it in the sun', minutes: 5 }],
  [/\.(height|floorArea|area|width)$/, { how: 'Measure it with the tape', minutes: 5 }],
  [/roof\.airChanges$/, { how: 'Count the vents and measure their openings', minutes: 20 }],
];

/** How one unknown is settled; undefined where there is no short way. */
export const wayToKnow = (path: string): { readonly how: string; readonly minutes: number } | undefined =>
  ways[path] ?? waysByField.find(([field]) => field.test(path))?.[1];

/** Unknowns that no walk through the house settles. */
const beyond: ReadonlySet<string> = new Set(['house.fuel.energy#night']);

/** The unknowns that move a result most, each with what would settle it. */
export const measurementsFor = (drivers: readonly Driver[], most = 3): Measurement[] =>
  drivers
    .filter((d) => !beyond.has(d.path))
    .map((d) => ({ path: d.path, reach: Math.max(Math.abs(d.atLow), Math.abs(d.atHigh)), way: wayToKnow(d.path) }))
    .slice(0, most)
    .map(({ path, reach, way }) => ({
      path,
      reach,
      how: way?.how ?? 'Measure it',
      ...(way ? { minutes: way.minutes } : {}),
    }));
