/** One instance of the published form: single mode, renewable resources, all lengths whole. */
export type Instance = {
  readonly durations: readonly number[];
  readonly needs: readonly (readonly number[])[];
  /** What comes after each job, counted from 0. */
  readonly after: readonly (readonly number[])[];
  readonly capacity: readonly number[];
};

/** A line of whole numbers, with its number in the file for whoever has to mend it. */
type Line = { readonly at: number; readonly numbers: readonly number[] };

const titles = {
  relations: 'PRECEDENCE RELATIONS',
  requests: 'REQUESTS/DURATIONS',
  capacity: 'RESOURCEAVAILABILITIES',
} as const;
const headings: Readonly<Record<keyof typeof titles, RegExp>> = {
  relations: /^\s*PRECEDENCE\s+RELATIONS/i,
  requests: /^\s*REQUESTS\s*\/\s*DURATIONS/i,
  capacity: /^\s*RESOURCE\s*AVAILABILITIES/i,
};

/** Periods and jobs beyond which an instance is no work of a crew, and would take all memory. */
const periodsMost = 20_000;
const jobsMost = 1000;

/** Lines of whole numbers below a heading, up to a line of stars or the next heading; the words above the first are passed. */
function rowsUnder(lines: readonly string[], of: keyof typeof titles): Line[] {
  const from = lines.findIndex((l) => headings[of].test(l));
  if (from < 0) throw new Error(`the section “${titles[of]}” is missing`);
  const rows: Line[] = [];
  for (let i = from + 1; i < lines.length; i++) {
    const words = (lines[i] ?? '').trim().split(/\s+/);
    if (words[0] === '') continue;
    if (/^\*+$/.test(words[0] ?? '') || Object.values(headings).some((h) => h.test(lines[i] ?? ''))) break;
    const wrong = words.find((x) => !/^\d+$/.test(x));
    // Names of columns and the dashes under them begin with no digit.
    if (rows.length === 0 && wrong !== undefined && !/^\d/.test(words[0] ?? '')) continue;
    if (wrong !== undefined) throw new Error(`line ${i + 1}: “${wrong}” is no whole number`);
    rows.push({ at: i + 1, numbers: words.map(Number) });
  }
  if (rows.length === 0) throw new Error(`line ${from + 1}: no line of whole numbers follows “${titles[of]}”`);
  return rows;
}

/** A count that the head of the file states, where it does. */
function stated(lines: readonly string[], what: RegExp): number | undefined {
  const found = lines.find((l) => what.test(l))?.split(':')[1];
  return found === undefined ? undefined : Number.parseInt(found, 10);
}

/** Reads a `.sm` text with any line ends and spacing. Throws what is wrong in words, with its line: a file of a check, not of a person. */
export function readInstance(text: string): Instance {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  if (text.trim() === '') throw new Error('the file is empty');
  const relations = rowsUnder(lines, 'relations');
  const requests = rowsUnder(lines, 'requests');
  const [capacity] = rowsUnder(lines, 'capacity');
  if (!capacity) throw new Error('no capacities');
  const n = relations.length;
  if (n > jobsMost) throw new Error(`${n} jobs; at most ${jobsMost} are read`);
  const jobs = stated(lines, /^\s*jobs\b.*:/i);
  if (jobs !== undefined && jobs !== n) throw new Error(`its head says ${jobs} jobs, ${n} have relations`);
  if (requests.length !== n) throw new Error(`${n} jobs have relations, ${requests.length} have durations`);
  const kinds = stated(lines, /^\s*-\s*renewable\b.*:/i);
  if (kinds !== undefined && kinds !== capacity.numbers.length)
    throw new Error(
      `line ${capacity.at}: its head says ${kinds} resources, ${capacity.numbers.length} have a capacity`,
    );
  for (const [i, r] of relations.entries()) readable(r, i, n);
  for (const [i, r] of requests.entries()) asked(r, i, capacity.numbers);
  const instance = {
    durations: requests.map((r) => r.numbers[2] ?? 0),
    needs: requests.map((r) => r.numbers.slice(3)),
    after: relations.map((r) => r.numbers.slice(3).map((j) => j - 1)),
    capacity: capacity.numbers,
  };
  const all = instance.durations.reduce((a, d) => a + d, 0);
  if (all > periodsMost) throw new Error(`all jobs together take ${all} periods; at most ${periodsMost} are read`);
  const circle = inCircle(instance.after);
  if (circle !== undefined)
    throw new Error(`line ${relations[circle]?.at}: job ${circle + 1} comes after itself, through others or at once`);
  return instance;
}

function readable({ at, numbers }: Line, i: number, jobs: number): void {
  const [job, modes, count, ...after] = numbers;
  if (job !== i + 1) throw new Error(`line ${at}: job ${job} stands where job ${i + 1} should`);
  if (modes !== 1) throw new Error(`line ${at}: job ${job} has ${modes ?? 'no'} modes; only single ones are read`);
  if (after.length !== count)
    throw new Error(`line ${at}: job ${job} says ${count ?? 'not how many'} jobs after it and lists ${after.length}`);
  const none = after.find((j) => j < 1 || j > jobs);
  if (none !== undefined) throw new Error(`line ${at}: job ${job} is before job ${none}, which is not there`);
}

function asked({ at, numbers }: Line, i: number, capacity: readonly number[]): void {
  const [job, , duration, ...needs] = numbers;
  if (job !== i + 1) throw new Error(`line ${at}: job ${job} stands where job ${i + 1} should`);
  if (duration === undefined || needs.length !== capacity.length)
    throw new Error(`line ${at}: job ${job} has ${needs.length} requests for ${capacity.length} resources`);
  needs.forEach((need, r) => {
    if (duration > 0 && need > (capacity[r] ?? 0))
      throw new Error(`line ${at}: job ${job} asks for ${need} of resource ${r + 1}, which has ${capacity[r]}`);
  });
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
