import { madeOfTheSame } from '../plan/sameParts.ts';
import type { DuctSection } from './ductwork.ts';

/** Gives a section as it was made of the same part of the document before, where it is made of the same. */
export type SameSections = (of: object, made: DuctSection) => DuctSection;

/** Sections stay the same objects from one model to the next, so that what is laid out for them stands. */
export function sameSections(): SameSections {
  const kept = new WeakMap<object, DuctSection>();
  return (of, made) => {
    const last = kept.get(of);
    if (last && madeOfTheSame(last, made)) return last;
    if (!last) kept.set(of, made);
    return made;
  };
}
