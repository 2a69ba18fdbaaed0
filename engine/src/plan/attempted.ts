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

/** All of several parts, or the first fault among them. */
export function allOf<T extends object>(parts: { readonly [K in keyof T]: Attempted<T[K]> }): Attempted<T> {
  const whole: Partial<T> = {};
  for (const name of Object.keys(parts) as (keyof T)[]) {
    const part = parts[name];
    if ('fault' in part) return part;
    whole[name] = part.value;
  }
  return { value: whole as T };
}
