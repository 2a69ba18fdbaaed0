import type { Sources } from '../plan/source.ts';

export const sources: Sources = {
  project: { title: 'Entered in the project', standing: 'project' },
  'condensate.latent': {
    title: 'Latent heat of a coil over 2.454 MJ/kg of water',
    standing: 'definition',
  },
  'condensate.share': {
    title: 'Common practice, no source: 70 to 85 % of a cooling unit’s capacity is sensible',
    standing: 'common practice',
  },
  'condensate.trap': {
    title:
      'An air handler’s manual, and R. Brusha, Condensate traps for cooling coils: drop of the largest suction and an inch of water, seal of half of it',
    standing: 'maker',
  },
  'condensate.trap-pressed': {
    title: 'An air handler’s manual: a seal of the fan’s pressure; half an inch more is common practice, no source',
    standing: 'common practice',
  },
  'condensate.suction': {
    title: 'Common practice, no source: a filter is changed at twice its clean pressure; a wet coil takes 40 to 125 Pa',
    standing: 'common practice',
  },
  'condensate.room': {
    title: 'Common practice, no source: below the seal lies the pipe itself',
    standing: 'common practice',
  },
  'condensate.slope': {
    title: 'International Mechanical Code 307.2.1: an eighth of an inch in a foot at the least',
    standing: 'standard',
  },
  'condensate.manning': {
    title: 'Manning’s formula, smooth plastic of 0.009, half full',
    standing: 'from memory',
  },
  'condensate.pipe': {
    title:
      'International Mechanical Code 307.2.2: three quarters of an inch at the least, never less than the pan’s outlet',
    standing: 'standard',
  },
  'condensate.vent': {
    title: 'Common practice, no source: the vent stands after the trap and above the pan’s rim',
    standing: 'common practice',
  },
  'condensate.second': {
    title: 'International Mechanical Code 307.2.3: a pan, a second outlet or a switch where overflow could do damage',
    standing: 'standard',
  },
  'condensate.pan': {
    title: 'International Mechanical Code 307.2.3: a pan 1 1/2 in deep, 3 in longer and wider than the unit',
    standing: 'standard',
  },
  'condensate.ends': {
    title: 'International Mechanical Code 307.2.1; the air gap from memory',
    standing: 'standard',
  },
  'condensate.frost': {
    title: 'Heat through a pipe’s jacket into still air; water at 5 °C, 334 kJ/kg to freeze',
    standing: 'definition',
  },
  'condensate.attic-night': { title: 'The attic at the cold night, from the house as entered', standing: 'definition' },
  'condensate.coldest': {
    title:
      'The cold night’s air, as uncertain as it is; below the floor the year’s, at most as much colder as the night outdoors may be; inside a heated house 12 °C, common practice, no source',
    standing: 'common practice',
  },
  'condensate.muggy': {
    title: 'Latent heat of the coil’s model at the hot hour, where air, unit and house agree, over 2.454 MJ/kg',
    standing: 'definition',
  },
  'condensate.risers': {
    title:
      'Geometry: risers give the trap its room, the drain its fall, and keep the unit above the pan’s rim (International Mechanical Code 307.2.3, from memory)',
    standing: 'from memory',
  },
  'condensate.second-above': {
    title: 'Common practice, no source: the second outlet lies a quarter of an inch or more above the first',
    standing: 'common practice',
  },
  'condensate.pump': {
    title:
      'Straight line between a pump’s two ends, below its real curve; slow flow through its tube by Hagen and Poiseuille',
    standing: 'definition',
  },
  'condensate.pump-spare': {
    title: 'Common practice, no source: a pump lifts twice the most that the unit makes',
    standing: 'common practice',
  },
  'condensate.pump-stops': {
    title: 'International Mechanical Code 307.3: a pump in an attic or crawl space stops the unit when it fails',
    standing: 'standard',
  },
};
