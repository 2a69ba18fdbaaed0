import { canonicalJson, canonicalName, hashOf } from '@kneewall/project';

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

/** Whole numbers of up to 9 digits are what they would be rounded to; -0 becomes 0. */
const roundedNumber = (n: number): number =>
  Number.isInteger(n) && Math.abs(n) < 1e9 ? n + 0 : Number(n.toPrecision(9));

/** A value as jobs have it: every number rounded to 9 significant digits, so that a last bit makes no new job; and its canonical text. */
type Plain = { readonly value: unknown; readonly text: string };

/** Parts of inputs already made plain, by identity; lent by whoever makes many jobs of the same parts. */
export type PlainParts = WeakMap<object, Plain>;

/** How far down parts are kept: to the sections of the ducts of a job, and no crumbs. */
const keptTo = 3;

function plainOf(value: unknown, kept: PlainParts, depth = 0): Plain {
  if (typeof value === 'number') {
    const rounded = roundedNumber(value);
    return { value: rounded, text: canonicalJson(rounded) };
  }
  if (typeof value !== 'object' || value === null) return { value, text: canonicalJson(value) };
  const known = depth <= keptTo ? kept.get(value) : undefined;
  if (known) return known;
  const made = Array.isArray(value) ? plainList(value, kept, depth + 1) : plainRecord(value, kept, depth + 1);
  if (depth <= keptTo) kept.set(value, made);
  return made;
}

function plainList(list: readonly unknown[], kept: PlainParts, depth: number): Plain {
  const parts = list.map((x) => plainOf(x, kept, depth));
  return { value: parts.map((x) => x.value), text: `[${parts.map((x) => x.text).join(',')}]` };
}

/** Names stand as they did in the value, and sorted in its text. */
function plainRecord(record: object, kept: PlainParts, depth: number): Plain {
  const value: Record<string, unknown> = {};
  const texts: (readonly [string, string])[] = [];
  for (const [name, part] of Object.entries(record)) {
    const plain = plainOf(part, kept, depth);
    value[name] = plain.value;
    if (part !== undefined) texts.push([name, plain.text]);
  }
  texts.sort(([a], [b]) => (a < b ? -1 : 1));
  return { value, text: `{${texts.map(([name, text]) => `${canonicalName(name)}:${text}`).join(',')}}` };
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
