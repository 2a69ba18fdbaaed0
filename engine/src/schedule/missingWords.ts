import type { WindowToAdd } from './result.ts';

/** What the windows there are lack for a task. */
export const missingWords: Readonly<Record<WindowToAdd['missing'], string>> = {
  length: 'no window there is long enough',
  cool: 'its free hours are too hot up there',
  people: 'too few people are there when there is time',
  time: 'the windows are used up',
};
