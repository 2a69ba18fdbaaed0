import { choice, group, map, quantity, text } from './field.ts';

const layers = map(
  {
    name: text({ label: 'Material' }),
    thickness: quantity('length', {
      label: 'Thickness',
      neededBy: ['loads'],
      plausible: { min: 0.0005, max: 1 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    conductivity: quantity('conductivity', {
      label: 'Conductivity',
      neededBy: ['loads'],
      plausible: { min: 0.015, max: 400 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
    resistance: quantity('r-value', {
      label: 'Resistance',
      help: 'Instead of thickness and conductivity: an air gap, or insulation sold by its R-value.',
      neededBy: [],
      plausible: { min: 0.01, max: 15 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    density: quantity('density', {
      label: 'Density',
      default: { low: 20, likely: 500, high: 2000 },
      plausible: { min: 5, max: 8000 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
    specificHeat: quantity('specific-heat', {
      label: 'Heat held',
      default: { low: 800, likely: 1000, high: 1600 },
      plausible: { min: 300, max: 4200 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
    framing: group(
      {
        share: quantity('fraction', {
          label: 'Share of wood across this layer',
          help: 'Studs 16 in apart with plates are about 0.23; joists 0.10.',
          default: 0,
          plausible: { min: 0, max: 0.4 },
          possible: { min: 0, max: 1 },
          usually: 'assumed',
        }),
        conductivity: quantity('conductivity', {
          label: 'Conductivity of the wood',
          default: 0.13,
          plausible: { min: 0.08, max: 60 },
          possible: { min: 0 },
          usually: 'assumed',
        }),
      },
      { label: 'Framing' },
    ),
  },
  { label: 'Layers', one: 'Layer', help: 'From the inside to the outside.' },
);

/** How walls, ceilings, roofs and floors are built: a known figure, layers, or a common construction. */
export const assemblies = map(
  {
    name: text({ label: 'Name' }),
    uValue: quantity('u-value', {
      label: 'Heat flow through it',
      help: 'Air to air, where it is known. It stands above the layers.',
      neededBy: [],
      plausible: { min: 0.05, max: 7 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    common: choice(
      {
        'wall-empty': 'Wood-framed wall, empty',
        'wall-thin': 'Wood-framed wall, thin batt (R-7)',
        'wall-r11': 'Wood-framed wall, R-11 to R-13',
        'wall-r19': 'Wood-framed wall, R-19',
        'wall-r20-continuous': 'Wood-framed wall, R-20 and outer board',
        'wall-stone': 'Solid stone or brick wall',
        'wall-log': 'Solid log wall',
        'wall-block': 'Hollow concrete block',
        'wall-block-foam': 'Concrete block with foam board',
        'wall-concrete-foam': 'Concrete between foam boards',
        'wall-panel': 'Foam panel between boards',
        'wall-straw': 'Straw bales, plastered',
        'ceiling-bare': 'Ceiling, nothing on it',
        'ceiling-r7': 'Ceiling, R-7',
        'ceiling-r11': 'Ceiling, R-11',
        'ceiling-r19': 'Ceiling, R-19',
        'ceiling-r30': 'Ceiling, R-30',
        'ceiling-r49': 'Ceiling, R-49',
        'ceiling-sawdust': 'Ceiling, old sawdust or shavings',
        'roof-batt': 'Sloped roof, batts between rafters',
        'roof-foam': 'Sloped roof, foam under the deck',
        'floor-bare': 'Wood floor, nothing under it',
        'floor-r11': 'Wood floor, R-11',
        'floor-r19': 'Wood floor, R-19',
        'floor-r30': 'Wood floor, R-30',
        slab: 'Concrete slab on the ground',
        'door-wood': 'Solid wood door',
      },
      { label: 'Common construction', default: 'wall-r11' },
    ),
    layers,
  },
  { label: 'Constructions', one: 'Construction' },
);
