import { group, map, quantity, text } from './field.ts';

const along = (label: string) =>
  quantity('length', { label, neededBy: [], plausible: { min: -60, max: 60 }, usually: 'measured' });
const side = (label: string, most: number) =>
  quantity('length', {
    label,
    neededBy: [],
    plausible: { min: 0.01, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });

/** A place in the house, from a corner of the person's own choice. */
export const placeInside = (label: string, help: string) =>
  group(
    { x: along('Across the plan'), y: along('Up the plan'), z: along('Above the ground outside') },
    { label, help },
  );

const box = {
  name: text({ label: 'Name' }),
  x: along('Its left side, across the plan'),
  y: along('Its near side, up the plan'),
  z: along('Its lower side, above the ground outside'),
  width: side('Width, across the plan', 40),
  depth: side('Depth, up the plan', 40),
  height: side('Height', 12),
};

/** The way of the line inside: where it begins, what it may pass through, and what stands in it. */
export const indoor = group(
  {
    from: placeInside('The air handler’s pipes', 'Where the line is joined to the air handler.'),
    spaces: map(box, {
      label: 'What the line may pass through',
      one: 'Space',
      help: 'Attic, closet, chase, as boxes that touch or overlap. A slope is a few boxes in steps. Empty: anywhere.',
    }),
    things: map(box, {
      label: 'What it has to go round',
      one: 'Thing',
      help: 'Chimney, tank, truss, ducts, walkway, as boxes. 50 mm or 2 in are kept free round each.',
    }),
  },
  {
    label: 'The way inside',
    help: 'Everything from one corner of the house, heights from the ground outside. Only where a wall’s line inside is not measured, or to hold it against.',
  },
);
