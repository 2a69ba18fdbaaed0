import { choice, flag, reference } from './field.ts';

/** A flue that is open to the rooms: what burns on it, where it stands and how it runs. */
export const flue = {
  flue: flag({
    label: 'Stove or boiler flue open to the rooms',
    help: 'Yes for anything that burns with air from the rooms: stove, fire, draught-hood heater or boiler. Left empty counts as no.',
  }),
  flueOf: choice(
    {
      heater: 'Water heater with an open draught hood, alone on its flue',
      furnace: 'Boiler or furnace with an open draught hood',
      stove: 'Wood stove or open fire',
    },
    {
      label: 'What burns on that flue',
      help: 'Where nothing is said the strictest figure is used.',
      default: 'heater',
    },
  ),
  flueRoom: reference('house.rooms', {
    label: 'It stands in',
    help: 'Left empty it stands in the part of the house that is open to the hall, on the lowest floor.',
  }),
  flueRuns: choice(
    {
      inside: 'Up through the house: it stays about as warm as the rooms',
      outside: 'Up an outside wall, or mostly above the roof: it starts as cold as outdoors',
    },
    {
      label: 'That flue runs',
      help: 'A flue that has gone cold has no draught of its own and has to start against the pull of the warm house.',
      default: 'inside',
    },
  ),
};
