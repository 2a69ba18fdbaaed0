/** One instance of the published forms: single mode, renewable resources, all lengths whole. */
export type Instance = {
  readonly durations: readonly number[];
  readonly needs: readonly (readonly number[])[];
  /** What comes after each job, counted from 0. */
  readonly after: readonly (readonly number[])[];
  readonly capacity: readonly number[];
};

/** A line of whole numbers, with its number in the file for whoever has to mend it. */
export type Line = { readonly at: number; readonly numbers: readonly number[] };

/** Periods and jobs beyond which an instance is no work of a crew, and would take all memory. */
const periodsMost = 20_000;
const jobsMost = 1000;

/** A file's lines whatever their ends; lines that a mark opens as a comment, and the mark by which old systems end a file, are blank. */
export const linesOf = (text: string): string[] =>
  text
    .replace(/^\uFEFF/, '')
    .replaceAll('\u001A', '')
    .split(/\r\n|\n|\r/)
    .map((l) => (/^\s*(#|%|;|\/\/)/.test(l) ? '' : l));

/** A word as a whole number, “4.0” too; throws where it is none. */
export function wholeIn(word: string, at: number): number {
  if (!/^\d+(\.0*)?$/.test(word)) throw new Error(`line ${at}: “${word}” is no whole number`);
  return Number.parseInt(word, 10);
}

export function countable(jobs: number): void {
  if (jobs < 1) throw new Error('there is no job');
  if (jobs > jobsMost) throw new Error(`${jobs} jobs; at most ${jobsMost} are read`);
}

/** Where a file tells of each job: the line with what comes after it, and the line with what it asks for. */
export type Told = { readonly order: (job: number) => number; readonly asks: (job: number) => number };

/** Throws where jobs of the instance wait for themselves, are not there, or ask for too much. */
export function checkInstance({ durations, needs, after, capacity }: Instance, { order, asks }: Told): void {
  const all = durations.reduce((a, d) => a + d, 0);
  if (all > periodsMost) throw new Error(`all jobs together take ${all} periods; at most ${periodsMost} are read`);
  after.forEach((list, i) => {
    const none = list.find((j) => j < 0 || j >= durations.length);
    if (none !== undefined)
      throw new Error(`line ${order(i)}: job ${i + 1} is before job ${none + 1}, which is not there`);
  });
  needs.forEach((list, i) => {
    const r = list.findIndex((need, k) => (durations[i] ?? 0) > 0 && need > (capacity[k] ?? 0));
    if (r >= 0)
      throw new Error(
        `line ${asks(i)}: job ${i + 1} asks for ${list[r]} of resource ${r + 1}, which has ${capacity[r]}`,
      );
  });
  const circle = inCircle(after);
  if (circle !== undefined)
    throw new Error(`line ${order(circle)}: job ${circle + 1} comes after itself, through others or at once`);
}

/** A job that comes after itself; nothing where every job can be put in order. */
function inCircle(after: readonly (readonly number[])[]): number | undefined {
  const waits = after.map((_, i) => after.reduce((a, list) => a + list.filter((j) => j === i).length, 0));
  const ready = waits.flatMap((w, i) => (w === 0 ? [i] : []));
  const placed = new Set<number>();
  for (let i = ready.pop(); i !== undefined; i = ready.pop()) {
    placed.add(i);
    for (const j of after[i] ?? []) {
      waits[j] = (waits[j] ?? 0) - 1;
      if (waits[j] === 0) ready.push(j);
    }
  }
  const left = after.findIndex((_, i) => !placed.has(i));
  return left < 0 ? undefined : left;
}
