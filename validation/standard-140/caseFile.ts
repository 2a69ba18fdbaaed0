import { z } from 'zod';

const positive = z.number().positive();
const share = z.number().min(0).max(1);
const layer = z.union([
  z.strictObject({
    thickness: positive,
    conductivity: positive,
    density: z.number().min(0),
    heat: z.number().min(0),
  }),
  z.strictObject({ resistance: positive }),
]);
const films = z.union([
  z.strictObject({ inside: positive, outside: positive }),
  z.strictObject({ insideConvective: positive, outsideConvective: positive.optional() }),
]);
const bothSides = z.strictObject({ inside: share, outside: share });
const surface = z.looseObject({
  id: z.string(),
  zone: z.string(),
  other: z.string(),
  groundTemperature: z.number().optional(),
  area: positive,
  tilt: z.number(),
  azimuth: z.number(),
  layers: z.array(layer).min(1),
  films,
  absorptance: bothSides,
  emittance: bothSides,
  solarShare: share.optional(),
});
const shade = z.union([
  z.strictObject({
    kind: z.literal('overhang'),
    depth: positive,
    offset: z.number(),
    left: z.number(),
    right: z.number(),
  }),
  z.strictObject({
    kind: z.literal('fin'),
    side: z.enum(['left', 'right']),
    depth: positive,
    offset: z.number(),
    from: z.number(),
    to: z.number(),
  }),
]);
const pane = z.looseObject({
  /** m; refractive index; 1/m. */
  thickness: positive,
  index: positive,
  extinction: z.number().min(0),
});
const window = z.looseObject({
  id: z.string(),
  surface: z.string(),
  rect: z.strictObject({ x: z.number(), y: z.number(), width: positive, height: positive }),
  u: positive,
  shgcByAngle: z
    .array(z.tuple([z.number(), z.number()]))
    .min(1)
    .optional(),
  panes: z.array(pane).min(1).max(2).optional(),
  films: films.optional(),
  shades: z.array(shade).default([]),
});
const setPoint = z.union([z.number(), z.tuple([z.number(), z.number()])]).optional();
const hour = z.number().min(0).max(24);
const control = z.looseObject({
  zone: z.string(),
  hours: z.tuple([hour, hour]),
  heat: setPoint,
  cool: setPoint,
  ventilation: z.number().min(0).optional(),
});

/** A case file: geometry in metres and degrees, layers inside first, films in W/(m²K), ventilation in m³/s. */
export const caseFile = z.looseObject({
  source: z.string(),
  case: z.string(),
  weather: z.string(),
  site: z.looseObject({
    latitude: z.number(),
    longitude: z.number(),
    elevation: z.number(),
    timeZone: z.number(),
    groundReflectance: share,
  }),
  zones: z.array(z.looseObject({ id: z.string(), volume: positive })).min(1),
  surfaces: z.array(surface).min(1),
  windows: z.array(window).default([]),
  controls: z.array(control).default([]),
  gains: z.array(z.looseObject({ zone: z.string(), watts: z.number(), radiant: share })).default([]),
  leakage: z.array(z.looseObject({ zone: z.string(), airChanges: z.number().min(0) })).default([]),
  outputs: z
    .array(
      z.looseObject({
        field: z.enum([
          'annual-heating',
          'annual-cooling',
          'peak-heating',
          'peak-cooling',
          'highest',
          'lowest',
          'mean',
        ]),
        expected: z.number().optional(),
        low: z.number().optional(),
        high: z.number().optional(),
        tolerance: z.number().optional(),
      }),
    )
    .min(1),
});

export type CaseFile = z.infer<typeof caseFile>;
export type CaseSurface = CaseFile['surfaces'][number];
export type CaseWindow = CaseFile['windows'][number];
