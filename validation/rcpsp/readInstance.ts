/** One instance of the published form: single mode, renewable resources, all lengths whole. */
export type Instance = {
  readonly durations: readonly number[];
  readonly needs: readonly (readonly number[])[];
  /** What comes after each job, counted from 0. */
  readonly after: readonly (readonly number[])[];
  readonly capacity: readonly number[];
};

/** The whole numbers of a line; nothing where it holds anything else. */
const numbers = (line: string): number[] | undefined => {
  const words = line.trim().split(/\s+/);
  return words.every((x) => /^\d+$/.test(x)) ? words.map(Number) : undefined;
};

/** Lines of numbers that follow a heading, up to the next line of stars or the next heading. */
function rowsUnder(lines: readonly string[], heading: RegExp): number[][] {
  const from = lines.findIndex((l) => heading.test(l));
  if (from < 0) throw new Error(`no section ${heading.source.replace(/\\s\*/g, ' ').replace(/[\\^]/g, '')}`);
  const rows: number[][] = [];
  for (const line of lines.slice(from + 1)) {
    const row = numbers(line);
    if (row && row.length > 0 && line.trim() !== '') rows.push(row);
    else if (rows.length > 0 && line.trim() !== '') break;
  }
  return rows;
}

/** Reads a `.sm` text with any line ends and spacing. Throws what is wrong in words: a file of a check, not of a person. */
export function readInstance(text: string): Instance {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const relations = rowsUnder(lines, /^\s*PRECEDENCE\s+RELATIONS/i);
  const requests = rowsUnder(lines, /^\s*REQUESTS\s*\/\s*DURATIONS/i);
  const [capacity] = rowsUnder(lines, /^\s*RESOURCE\s*AVAILABILITIES/i);
  if (!capacity) throw new Error('no capacities');
  const n = relations.length;
  if (requests.length !== n) throw new Error(`${n} jobs have relations, ${requests.length} have durations`);
  if (relations.some((r) => r[1] !== 1)) throw new Error('jobs of several modes are not read');
  relations.forEach((r, i) => {
    if (r[0] !== i + 1 || requests[i]?.[0] !== i + 1) throw new Error(`job ${i + 1} is not in its place`);
    if (r.length !== 3 + (r[2] ?? -1))
      throw new Error(`job ${i + 1} says ${r[2]} jobs after it and lists ${r.length - 3}`);
    if (r.slice(3).some((j) => j < 1 || j > n)) throw new Error(`job ${i + 1} is before a job that is not there`);
    if (requests[i]?.length !== 3 + capacity.length) throw new Error(`job ${i + 1} lacks a request`);
  });
  return {
    durations: requests.map((r) => r[2] ?? 0),
    needs: requests.map((r) => r.slice(3)),
    after: relations.map((r) => r.slice(3).map((j) => j - 1)),
    capacity,
  };
}
