import { quantity } from './field.ts';

type Spec = Pick<Parameters<typeof quantity>[1], 'help' | 'default' | 'neededBy'> & {
  usually?: 'measured' | 'estimated';
};

/** A time of day from midnight to midnight, as the clock shows it. Without a default nothing waits for it unless told. */
export const timeOfDay = (label: string, spec: Spec = {}) =>
  quantity('time-of-day', {
    label,
    ...(spec.default === undefined ? { neededBy: [] } : {}),
    plausible: { min: 0, max: 86_400 },
    possible: { min: 0, max: 86_400 },
    usually: 'estimated',
    ...spec,
  });
