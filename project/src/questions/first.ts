import { nodeAt, type SchemaNode } from '../document/nodes.ts';
import type { Project } from '../schema/project.ts';

/** One question of the first ten minutes. Its label, help, answers and units are the schema's; "don't know" always goes. */
export type Question = {
  /** Dotted document path. */
  readonly path: string;
  /** Answers as people write them, each of which is understood. */
  readonly examples?: readonly string[];
};

/** Questions that belong together. */
export type Bunch = {
  readonly title: string;
  readonly why: string;
  readonly questions: readonly Question[];
  /** Asked only of those who make their own electricity. */
  readonly own?: true;
};

/** What one knows without a ladder: under 25 questions, and no weather file. */
export const firstBunches: readonly Bunch[] = [
  {
    title: 'The place',
    why: 'No weather file is needed.',
    questions: [
      { path: 'site.latitude', examples: ['44.6'] },
      { path: 'site.elevation', examples: ['300 ft', '90 m'] },
      { path: 'site.coast' },
      { path: 'site.coldNight', examples: ['-4 F', '-20 C'] },
      { path: 'site.hotAfternoon', examples: ['88 F', '31 C'] },
    ],
  },
  {
    title: 'The house',
    why: 'Walk round it once; guesses are welcome and stay marked as guesses.',
    questions: [
      { path: 'house.floorArea', examples: ['1050 sq ft', '95 m2'] },
      { path: 'house.storeys', examples: ['1'] },
      { path: 'house.era' },
      { path: 'house.attic' },
      { path: 'house.below' },
      { path: 'house.draught' },
      { path: 'house.flue' },
    ],
  },
  {
    title: 'Last winter',
    why: 'What was burned, and how warm it was, is worth more than twenty answers about walls.',
    questions: [
      { path: 'house.fuel.kind' },
      { path: 'house.fuel.energy', examples: ['3 cords', '500 gal of oil', '600 therms', '18000 kWh'] },
      { path: 'house.fuel.indoor', examples: ['66 F', '19 C'] },
    ],
  },
  {
    title: 'Power',
    why: 'What the electricity can carry.',
    questions: [{ path: 'power.supply' }, { path: 'power.voltage', examples: ['240 V'] }, { path: 'power.phases' }],
  },
  {
    title: 'Your own power',
    why: 'Only where you make your own.',
    questions: [
      { path: 'power.inverter.continuous', examples: ['6 kW', '6000 W'] },
      { path: 'power.battery.energy', examples: ['28 kWh', '560 Ah at 51.2 V'] },
      { path: 'power.battery.place' },
    ],
    own: true,
  },
];

/** The bunches that this project is asked. */
export const bunchesFor = (project: Project): readonly Bunch[] =>
  firstBunches.filter((b) => !b.own || project.power?.supply === 'own');

/** What the schema says of a question. */
export function fieldOf({ path }: Question): SchemaNode {
  const found = nodeAt(path.split('.'));
  if (!found) throw new Error(`assert: the first questions ask for ${path}, which the schema has not`);
  return found.node;
}
