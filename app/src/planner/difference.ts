/**
 * What of a plain value is another than before: a value in its place, or parts of it that are. An edit moves little of a
 * plan, and what is sent from worker to page is copied twice.
 */
export type Difference =
  | { readonly now: unknown }
  | { readonly parts: readonly (readonly [name: string, Difference])[] };

type Plain = Readonly<Record<string, unknown>>;

const isPlain = (x: unknown): x is Plain =>
  typeof x === 'object' && x !== null && Object.getPrototypeOf(x) === Object.prototype;

/** Names of the parts that two values have in common; nothing where one is no copy of the other with parts changed. */
function sameNames(before: unknown, after: unknown): readonly string[] | undefined {
  const alike = Array.isArray(before) ? Array.isArray(after) : isPlain(before) && isPlain(after);
  if (!alike) return undefined;
  const [was, is] = [Object.keys(before as Plain), Object.keys(after as Plain)];
  return was.length === is.length && was.every((name, i) => name === is[i]) ? is : undefined;
}

/** How `after` is made from `before`; nothing where both are made of the same, to the bit. */
export function differenceOf(before: unknown, after: unknown): Difference | undefined {
  if (Object.is(before, after)) return undefined;
  const names = sameNames(before, after);
  if (!names) return { now: after };
  const parts: [string, Difference][] = [];
  for (const name of names) {
    const part = differenceOf((before as Plain)[name], (after as Plain)[name]);
    if (part) parts.push([name, part]);
  }
  return parts.length > 0 ? { parts } : undefined;
}

/** The value after: whatever of it did not change is the same object as before. */
export function applied(before: unknown, difference: Difference | undefined): unknown {
  if (!difference) return before;
  if ('now' in difference) return difference.now;
  const made: Record<string, unknown> = Array.isArray(before)
    ? ([...before] as unknown as Record<string, unknown>)
    : { ...(before as Plain) };
  for (const [name, part] of difference.parts) made[name] = applied(made[name], part);
  return made;
}
