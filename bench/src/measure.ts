export type BenchRow = {
  readonly name: string;
  /** Of ours and of the reference, the median of several runs in turn. */
  readonly ours: number;
  readonly reference: number;
  readonly ratio: number;
  readonly goal: string;
  readonly holds: boolean;
  /** MB for rows of memory: then `reference` is the limit. */
  readonly unit: 'ms' | 'MB';
};

const runs = 15;

function time(run: () => void): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

export const median = (x: number[]): number => [...x].sort((a, b) => a - b)[x.length >> 1] ?? 0;

/** Runs until the machine code is settled: both sides by the same rule. */
function warm(run: () => void): void {
  const start = performance.now();
  while (performance.now() - start < 300) run();
}

/** Times two pieces of work in turn, so that whatever else the machine does falls on both. */
export function side(ours: () => void, reference: () => void): { ours: number; reference: number } {
  warm(ours);
  warm(reference);
  const a: number[] = [];
  const b: number[] = [];
  for (let i = 0; i < runs; i++) {
    a.push(time(ours));
    b.push(time(reference));
  }
  return { ours: median(a), reference: median(b) };
}

/** Multiply-adds that a core of this class does in about a millisecond; goals in milliseconds are counted in them. */
export const perMillisecond = 700_000;

let sink = 0;
/** The bare reference for absolute goals: a loop of so many multiply-adds on typed arrays. */
export function multiplyAdds(count: number): void {
  const x = new Float64Array(1024).fill(1.0000001);
  let sum = 0;
  for (let i = 0; i < count; i++) sum = sum * 0.9999999 + (x[i & 1023] ?? 0);
  sink += sum;
}
export const kept = (): number => sink;

/** A row whose goal is that ours takes at most `most` times the reference. */
export function atMost(name: string, times: { ours: number; reference: number }, most: number, goal: string): BenchRow {
  const ratio = times.ours / times.reference;
  return { name, ...times, ratio, goal, holds: ratio <= most, unit: 'ms' };
}
