import type { Means, VisitFound } from '@kneewall/engine';
import { nodeAt } from '@kneewall/project';

/** What things are read with, in the words of the document. */
export const meansWords = (nodeAt(['readings', '*', 'means'])?.node.meta.options ?? {}) as Readonly<
  Record<Means, string>
>;

/** What each kind of number can be read with, the usual one first. */
export const meansFor: Readonly<Record<VisitFound['expected'][number]['group'], readonly Means[]>> = {
  pressure: ['gauge'],
  'room-pressure': ['gauge'],
  flow: ['bag', 'hood', 'vane'],
  temperature: ['thermometer'],
  power: ['meter', 'house', 'clamp'],
  water: ['cup'],
  time: ['watch'],
};
