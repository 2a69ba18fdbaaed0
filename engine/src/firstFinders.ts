import { accessFinder } from './access/finder.ts';
import { airFinder } from './air/finder.ts';
import { circuitFinder } from './circuit/finder.ts';
import { climateFinder } from './climate/finder.ts';
import { condensateFinder } from './condensate/finder.ts';
import { equipmentFinder } from './equipment/finder.ts';
import type { FoundWith } from './find.ts';
import type { AnyFinder } from './judgeOne.ts';
import { linesetFinder } from './lineset/finder.ts';
import { loadsFinder } from './loads/finder.ts';
import { offgridFinder } from './offgrid/finder.ts';

/**
 * The trades whose findings do not hang on what others say, in the order in which they need each other: all that stands
 * before a page draws its first counts.
 */
export const firstFinders: FoundWith = {
  finders: [
    climateFinder,
    loadsFinder,
    equipmentFinder,
    airFinder,
    condensateFinder,
    linesetFinder,
    circuitFinder,
    offgridFinder,
    accessFinder,
  ] as unknown as readonly AnyFinder[],
};
