/**
 * Lends what is kept between evaluations to work with, by name: the same each time, made when first asked for. Only for
 * what lays out alike things one after the other faster and gives the same to the bit whatever it did before.
 */
export type Lend = <T>(name: string, make: () => T) => T;

/** Keeps nothing. */
export const madeAnew: Lend = (_name, make) => make();

export function lender(): Lend {
  const lent = new Map<string, unknown>();
  return <T>(name: string, make: () => T): T => {
    if (!lent.has(name)) lent.set(name, make());
    return lent.get(name) as T;
  };
}
