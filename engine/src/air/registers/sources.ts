import type { Sources } from '../../plan/source.ts';

export const registerSources: Sources = {
  'air.throw': {
    title:
      'Throw to 50 fpm (0.25 m/s) over the way to the wall: three quarters to twice of it. Common practice, no source',
    standing: 'common practice',
  },
  'air.warm-reach': {
    title:
      'ASHRAE 62.1, distribution of warm air from ceilings: still 150 fpm (0.8 m/s) within 4.5 ft (1.4 m) of the floor',
    edition: '2007, table 6-2, as quoted',
    standing: 'standard',
  },
  'air.draught': {
    title:
      'ISO 7730 class of limits for people at rest: 0.25 m/s, and 0.15 m/s in winter for who lies; the free-jet profile beside the middle',
    edition: '1984 and after',
    standing: 'from memory',
  },
  'jet.beside': {
    title: 'Free jets: Gaussian across, half of the speed left at a tenth of the way; textbook of turbulent jets',
    standing: 'from memory',
  },
  'air.cold-drop': {
    title: 'Common practice, no source: cold air should not come below 1.8 m before the far wall',
    standing: 'common practice',
  },
  'jet.drop': {
    title: 'Koestel, paths of horizontally projected heated and chilled air jets, ASHVE Transactions',
    edition: '1955',
    standing: 'from memory',
  },
  'air.room-sound': {
    title: 'ASHRAE Applications, noise chapter: bedrooms NC 25, living rooms NC 30',
    standing: 'from memory',
  },
  'air.blower-sound': {
    title:
      'The published method for large blowers, common practice for a small one: 10 dB either way; lined duct takes 1.5 to 6 dB a metre',
    standing: 'common practice',
  },
  'sound.fan': {
    title: 'ASHRAE, specific sound power of forward-curved fans: rises with 10 log of flow and 20 log of pressure',
    edition: '1987',
    standing: 'from memory',
  },
  'sound.path': {
    title: 'ASHRAE Applications, noise chapter: bends without lining, reflection at the end of a duct',
    standing: 'from memory',
  },
  'air.return-noise': {
    title: 'Common practice, no source: at least one bend between a return grille and the blower',
    standing: 'common practice',
  },
  'jet.throw': {
    title: 'ASHRAE Fundamentals, space air diffusion: throw of an isothermal jet and constants of outlets',
    standing: 'from memory',
  },
  'jet.fountain': {
    title: 'Turner, jets and plumes with negative or reversing buoyancy, Journal of Fluid Mechanics 26',
    edition: '1966',
    standing: 'from memory',
  },
  'sound.grille': {
    title: 'CIBSE Guide B, 5.A2.5, sound of grilles; noise criterion curves of Beranek (1957); ASHRAE room equation',
    edition: '2005',
    standing: 'handbook',
  },
};
