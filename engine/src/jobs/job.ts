import { canonicalJson, hashOf } from '@kneewall/project';

/** A long computation, as data. Two devices with equal inputs make the same key and may share the result. */
export type Job = {
  readonly key: string;
  readonly kind: string;
  readonly version: number;
  readonly inputs: unknown;
  /** `quick`: a second or two, done before other short ones. `long`: minutes, only when somebody asks. */
  readonly cost: 'quick' | 'short' | 'long';
};

export type JobMessage =
  | { readonly type: 'start'; readonly id: number; readonly key: string; readonly job: Job }
  | {
      readonly type: 'progress';
      readonly id: number;
      readonly key: string;
      readonly done: number;
      readonly total: number;
    }
  | { readonly type: 'result'; readonly id: number; readonly key: string; readonly result: unknown }
  | { readonly type: 'failed'; readonly id: number; readonly key: string; readonly problem: string }
  | { readonly type: 'cancel'; readonly id: number; readonly key: string };

/** Rounds every number to 9 significant digits, so that a last bit makes no new job. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return roundedNumber(value);
  if (Array.isArray(value)) return value.map(rounded);
  if (value === null || typeof value !== 'object') return value;
  const made: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(value)) made[name] = rounded(part);
  return made;
}

/** Whole numbers of up to 9 digits are what they would be rounded to; -0 becomes 0. */
const roundedNumber = (n: number): number =>
  Number.isInteger(n) && Math.abs(n) < 1e9 ? n + 0 : Number(n.toPrecision(9));

/** A value as jobs have it: rounded, and its canonical text. */
type Plain = { readonly value: unknown; readonly text: string };

/** Parts of inputs already made plain, by identity; lent by whoever makes many jobs of the same parts. */
export type PlainParts = WeakMap<object, Plain>;

function plainOf(value: unknown, kept: PlainParts): Plain {
  const known = typeof value === 'object' && value !== null ? kept.get(value) : undefined;
  if (known) return known;
  const plain = rounded(value);
  const made = { value: plain, text: canonicalJson(plain) };
  if (typeof value === 'object' && value !== null) kept.set(value, made);
  return made;
}

/** A job. Its key is the hash of the canonical text of kind, version and inputs; parts of the inputs in `kept` are not written again. */
export function makeJob(
  kind: string,
  version: number,
  inputs: object,
  cost: Job['cost'],
  kept: PlainParts = new WeakMap(),
): Job {
  const parts = Object.entries(inputs)
    .filter(([, part]) => part !== undefined)
    .map(([name, part]): [string, Plain] => [name, plainOf(part, kept)])
    .sort(([a], [b]) => (a < b ? -1 : 1));
  const text = parts.map(([name, part]) => `${JSON.stringify(name)}:${part.text}`).join(',');
  const key = hashOf(`{"inputs":{${text}},"kind":${JSON.stringify(kind)},"version":${version}}`);
  return { key, kind, version, inputs: Object.fromEntries(parts.map(([name, part]) => [name, part.value])), cost };
}

/** Results of jobs by key, and parsed blobs as `blob:<sha>`. */
export type Results = Readonly<Record<string, unknown>>;
