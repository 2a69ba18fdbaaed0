export type Path = readonly (string | number)[];

export type ProblemCode =
  | 'too-large'
  | 'too-deep'
  | 'not-text'
  | 'not-json'
  | 'duplicate-key'
  | 'forbidden-key'
  | 'not-finite'
  | 'not-a-project'
  | 'newer-version'
  | 'wrong-type'
  | 'impossible'
  | 'range-order'
  | 'not-an-option'
  | 'bad-id'
  | 'implausible'
  | 'dangling-reference'
  | 'length-differs'
  | 'incomplete'
  | 'area-differs'
  | 'outline-crossed'
  | 'unknown-field'
  | 'conflict'
  | 'unknown-format'
  | 'missing-column'
  | 'missing-hours'
  | 'duplicate-hours'
  | 'leap-day'
  | 'impossible-value'
  | 'wrong-unit'
  | 'time-slip'
  | 'elevation-mismatch'
  | 'other-place';

/**
 * One thing wrong with what was given, as data. `refused`: nothing was taken. `ask`: it was kept and the person
 * is asked. `mend` says in plain words what to do; it never carries a machine path or a stack trace.
 */
export type Problem = {
  readonly code: ProblemCode;
  readonly path: Path;
  readonly found?: unknown;
  readonly allowed?: unknown;
  readonly mend: string;
  readonly grade: 'refused' | 'ask';
};

/** A usable value and everything found wrong on the way to it. */
export type Checked<T> = { readonly value: T; readonly problems: readonly Problem[] };

export const dotted = (path: Path): string => path.join('.');

/** At most this much of a found value is repeated back. */
const longestEcho = 80;

/** A found value made safe to show: short, and never an object dump. */
export function echo(found: unknown): unknown {
  if (typeof found === 'string') return found.length > longestEcho ? `${found.slice(0, longestEcho)}…` : found;
  if (typeof found === 'number') return Number.isFinite(found) ? found : String(found);
  if (Array.isArray(found)) return `a list of ${found.length}`;
  if (found !== null && typeof found === 'object') return `a group of ${Object.keys(found).length}`;
  return found;
}

export const refused = (
  code: ProblemCode,
  path: Path,
  mend: string,
  more: { found?: unknown; allowed?: unknown } = {},
): Problem => ({ code, path, ...more, mend, grade: 'refused' });

export const asked = (
  code: ProblemCode,
  path: Path,
  mend: string,
  more: { found?: unknown; allowed?: unknown } = {},
): Problem => ({ code, path, ...more, mend, grade: 'ask' });
