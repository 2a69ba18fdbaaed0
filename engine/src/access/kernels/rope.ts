/** Newtons that a kilogram weighs. */
export const gravity = 9.80665;

/** A tackle: parts of rope at the load, what each sheave passes on, and whether the rope passes one more on its way down. */
export type Tackle = { readonly parts: number; readonly sheave: number; readonly lead: boolean };

/** Times the pull that a tackle holds: 1 + e + ... for its parts, times e for a lead sheave. Source: `access.rope`. */
export function advantage({ parts, sheave, lead }: Tackle): number {
  let sum = 0;
  for (let i = 0; i < parts; i++) sum += sheave ** i;
  return lead ? sum * sheave : sum;
}

/** N of pull for a load of `mass` kg, and N on what the tackle hangs from where the rope is pulled downward. */
export function hoist(mass: number, tackle: Tackle): { readonly pull: number; readonly anchor: number } {
  const weight = mass * gravity;
  const pull = weight / advantage(tackle);
  return { pull, anchor: weight + pull };
}

/** Times the held end's pull that a rope laid `turns` turns round a post holds. Source: `access.rope`. */
export const capstan = (friction: number, turns: number): number => Math.exp(friction * 2 * Math.PI * turns);
