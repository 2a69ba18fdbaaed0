import type { WayId } from './ways.ts';

/** What is hard about each place for the unit and its ducts, in a few words. Common practice, no source. */
export const hardSteps: Readonly<Partial<Record<WayId, string>>> = {
  'as-drawn': 'lifting the unit to where it is drawn; long shifts in the heat',
  buried: 'moving the blown insulation and putting it back; the building office has to allow it',
  inside: 'a closet lost, lowered ceilings, the blower’s noise next to rooms',
  kneewall: 'a door into the space, its slope insulated and sealed first, little headroom',
  rooms: 'a hole, a line set, a drain and a circuit for every unit; rooms without one follow by open doors',
};
