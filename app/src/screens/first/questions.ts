/** The first questions, in four bunches: what one knows without a ladder. Labels, help and answers are the schema's. */
export type Bunch = {
  readonly title: string;
  readonly why: string;
  readonly paths: readonly string[];
  readonly own?: true;
};

export const bunches: readonly Bunch[] = [
  {
    title: 'The place',
    why: 'No weather file is needed.',
    paths: ['site.latitude', 'site.elevation', 'site.coast', 'site.coldNight', 'site.hotAfternoon'],
  },
  {
    title: 'The house',
    why: 'Walk round it once; guesses are welcome and stay marked as guesses.',
    paths: [
      'house.floorArea',
      'house.storeys',
      'house.era',
      'house.attic',
      'house.below',
      'house.draught',
      'house.flue',
    ],
  },
  {
    title: 'Last winter',
    why: 'What was burned, and how warm it was, is worth more than twenty answers about walls.',
    paths: ['house.fuel.kind', 'house.fuel.energy', 'house.fuel.indoor'],
  },
  { title: 'Power', why: 'What the electricity can carry.', paths: ['power.supply', 'power.voltage', 'power.phases'] },
  {
    title: 'Your own power',
    why: 'Only where you make your own.',
    paths: ['power.inverter.continuous', 'power.battery.energy', 'power.battery.place'],
    own: true,
  },
];
