import { checkInstance, countable, type Instance, type Line, linesOf, wholeIn } from './instance.ts';
import { readPatterson } from './readPatterson.ts';

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

/** Lines of whole numbers below a heading, up to a line of stars or the next heading; the words above the first are passed. */
function rowsUnder(lines: readonly string[], of: keyof typeof titles): Line[] {
  const from = lines.findIndex((l) => headings[of].test(l));
  if (from < 0) throw new Error(`the section “${titles[of]}” is missing`);
  const rows: Line[] = [];
  for (let i = from + 1; i < lines.length; i++) {
    const words = (lines[i] ?? '').trim().split(/\s+/);
    if (words[0] === '') continue;
    if (/^\*+$/.test(words[0] ?? '') || Object.values(headings).some((h) => h.test(lines[i] ?? ''))) break;
    // Names of columns and the dashes under them begin with no digit.
    if (rows.length === 0 && !/^\d/.test(words[0] ?? '')) continue;
    rows.push({ at: i + 1, numbers: words.map((w) => wholeIn(w, i + 1)) });
  }
  if (rows.length === 0) throw new Error(`line ${from + 1}: no line of whole numbers follows “${titles[of]}”`);
  return rows;
}

/** A count that the head of the file states, where it does. */
function stated(lines: readonly string[], what: RegExp): number | undefined {
  const found = lines.find((l) => what.test(l))?.split(':')[1];
  return found === undefined ? undefined : Number.parseInt(found, 10);
}

/** Reads an instance with headings (`.sm`), or of numbers alone (`.rcp`). Throws what is wrong in words, with its line: a file of a check, not of a person. */
export function readInstance(text: string): Instance {
  const lines = linesOf(text);
  const first = lines.find((l) => l.trim() !== '');
  if (first === undefined) throw new Error('the file is empty');
  if (/^[\s\d.]+$/.test(first)) return readPatterson(text);
  const relations = rowsUnder(lines, 'relations');
  const requests = rowsUnder(lines, 'requests');
  const [capacity] = rowsUnder(lines, 'capacity');
  if (!capacity) throw new Error('no capacities');
  const n = relations.length;
  countable(n);
  const jobs = stated(lines, /^\s*jobs\b.*:/i);
  if (jobs !== undefined && jobs !== n) throw new Error(`its head says ${jobs} jobs, ${n} have relations`);
  if (requests.length !== n) throw new Error(`${n} jobs have relations, ${requests.length} have durations`);
  const kinds = stated(lines, /^\s*-\s*renewable\b.*:/i);
  if (kinds !== undefined && kinds !== capacity.numbers.length)
    throw new Error(
      `line ${capacity.at}: its head says ${kinds} resources, ${capacity.numbers.length} have a capacity`,
    );
  for (const [i, r] of relations.entries()) readable(r, i);
  for (const [i, r] of requests.entries()) asked(r, i, capacity.numbers.length);
  const instance = {
    durations: requests.map((r) => r.numbers[2] ?? 0),
    needs: requests.map((r) => r.numbers.slice(3)),
    after: relations.map((r) => r.numbers.slice(3).map((j) => j - 1)),
    capacity: capacity.numbers,
  };
  checkInstance(instance, { order: (i) => relations[i]?.at ?? 0, asks: (i) => requests[i]?.at ?? 0 });
  return instance;
}

function readable({ at, numbers }: Line, i: number): void {
  const [job, modes, count, ...after] = numbers;
  if (job !== i + 1) throw new Error(`line ${at}: job ${job} stands where job ${i + 1} should`);
  if (modes !== 1) throw new Error(`line ${at}: job ${job} has ${modes ?? 'no'} modes; only single ones are read`);
  if (after.length !== count)
    throw new Error(`line ${at}: job ${job} says ${count ?? 'not how many'} jobs after it and lists ${after.length}`);
}

function asked({ at, numbers }: Line, i: number, resources: number): void {
  const [job, , duration, ...needs] = numbers;
  if (job !== i + 1) throw new Error(`line ${at}: job ${job} stands where job ${i + 1} should`);
  if (duration === undefined || needs.length !== resources)
    throw new Error(`line ${at}: job ${job} has ${needs.length} requests for ${resources} resources`);
}
