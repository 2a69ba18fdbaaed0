/**
 * Whether two values are made of the same: the same objects, or plain objects and arrays with the same names in the same
 * order and the same in each. Numbers to the bit, so that one may stand for the other. Whatever else (typed arrays,
 * functions, maps) is the same only as the same object.
 */
export function madeOfTheSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a)) return Array.isArray(b) && sameEach(a, b);
  return isPlain(a) && isPlain(b) && sameByName(a, b);
}

type Plain = Readonly<Record<string, unknown>>;

const isPlain = (x: object): x is Plain => Object.getPrototypeOf(x) === Object.prototype;

function sameEach(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!madeOfTheSame(a[i], b[i])) return false;
  return true;
}

function sameByName(a: Plain, b: Plain): boolean {
  const names = Object.keys(a);
  const others = Object.keys(b);
  if (names.length !== others.length) return false;
  for (let i = 0; i < names.length; i++) {
    const name = names[i] ?? '';
    if (name !== others[i] || !madeOfTheSame(a[name], b[name])) return false;
  }
  return true;
}
