import type { WindowToAdd } from './result.ts';

/** What the windows there are lack for a task. */
export const missingWords: Readonly<Record<WindowToAdd['missing'], string>> = {
  length: 'length: no window there is long enough',
  cool: 'cool hours: those that are free are too hot up there',
  people: 'people: too few are there when there is time',
  time: 'time: the windows are used up',
};
