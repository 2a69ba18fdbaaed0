/** Why a statement cannot be made. */
export const becauseWords = ['missing', 'pending', 'not-converged', 'out-of-range', 'fault'] as const;
export type Because = (typeof becauseWords)[number];

/** A value, or why there is none and which document paths (or job keys) would give it. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly because: Because; readonly paths: readonly string[] };

/**
 * Thrown inside a trade where a value cannot be had, and caught by `attempt` round the smallest thing that depends
 * on it. It never leaves a trade, so that a missing window blinds one room and not the house.
 */
class Unresolved {
  readonly because: Because;
  readonly paths: readonly string[];
  constructor(because: Because, paths: readonly string[]) {
    this.because = because;
    this.paths = paths;
  }
}

/** Ends the enclosing `attempt`. */
export function unresolved(because: Because, ...paths: readonly string[]): never {
  throw new Unresolved(because, paths);
}

/** Runs a computation; a value that cannot be had becomes a reason. Anything else thrown is our own bug and goes on. */
export function attempt<T>(run: () => T): Outcome<T> {
  try {
    return { ok: true, value: run() };
  } catch (thrown) {
    if (thrown instanceof Unresolved) return { ok: false, because: thrown.because, paths: thrown.paths };
    throw thrown;
  }
}

/** The value of an outcome, or the end of the enclosing `attempt` for the same reason. */
export function required<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Unresolved(outcome.because, outcome.paths);
}
