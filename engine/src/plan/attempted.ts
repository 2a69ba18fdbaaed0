import { faultOf } from './fault.ts';

/** What a computation of ours gave, or the fault by which it broke. */
export type Attempted<T> = { readonly value: T } | { readonly fault: string };

/** Does it, and holds back what it throws: a mistake in one trade takes no other down. */
export function attempted<T>(compute: () => T): Attempted<T> {
  try {
    return { value: compute() };
  } catch (thrown) {
    return { fault: faultOf(thrown) };
  }
}
