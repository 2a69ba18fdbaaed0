/** Powers of ten for digits behind the mark. */
const tenths = Float64Array.from({ length: 20 }, (_, i) => 10 ** i);

/**
 * The number that stands in `text` from `from` up to `to`: sign, digits, one decimal mark (its character code). NaN for anything
 * else, an empty cell too; whoever asks looks at those slowly.
 */
export function numberAt(text: string, from: number, to: number, mark: number): number {
  let at = from;
  let end = to;
  while (at < end && text.charCodeAt(at) === 32) at++;
  while (end > at && text.charCodeAt(end - 1) === 32) end--;
  if (at === end) return Number.NaN;
  const first = text.charCodeAt(at);
  const negative = first === 45;
  if (negative || first === 43) at++;
  let value = 0;
  let digits = 0;
  let behind = -1;
  for (; at < end; at++) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) {
      value = value * 10 + (code - 48);
      digits++;
      if (behind >= 0) behind++;
    } else if (code === mark && behind < 0) behind = 0;
    else return Number.NaN;
  }
  if (digits === 0 || digits > 15) return Number.NaN;
  if (behind > 0) value /= tenths[behind]!;
  return negative ? -value : value;
}

/** Where the cells of `text` from `from` up to `to` begin and end; quotes are left out of their cell. Gives how many there are. */
export function cellsOf(
  text: string,
  from: number,
  to: number,
  delimiter: number,
  starts: Int32Array,
  ends: Int32Array,
): number {
  let count = 0;
  let at = from;
  while (at <= to && count < starts.length) {
    let begin = at;
    let end = at;
    if (text.charCodeAt(at) === 34) {
      begin = at + 1;
      end = begin;
      while (end < to && text.charCodeAt(end) !== 34) end++;
      at = end;
      while (at < to && text.charCodeAt(at) !== delimiter) at++;
    } else {
      while (at < to && text.charCodeAt(at) !== delimiter) at++;
      end = at;
    }
    starts[count] = begin;
    ends[count] = end;
    count++;
    at++;
  }
  return count;
}
