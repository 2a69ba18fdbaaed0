import { checkInstance, countable, type Instance, linesOf, wholeIn } from './instance.ts';

/**
 * Reads the plain form, numbers only: jobs and resources; capacities; then of each job its duration, its requests, how many jobs come
 * after it and which, counted from 1. Line ends stand anywhere. Throws what is wrong, with its line.
 */
export function readPatterson(text: string): Instance {
  const words = linesOf(text).flatMap((l, i) =>
    l
      .split(/\s+/)
      .filter((w) => w !== '')
      .map((w) => ({ at: i + 1, number: wholeIn(w, i + 1) })),
  );
  let next = 0;
  const take = (what: string): number => {
    const word = words[next++];
    if (!word) throw new Error(`line ${words.at(-1)?.at ?? 1}: the file ends before ${what}`);
    return word.number;
  };
  const list = (count: number, what: string): number[] => Array.from({ length: count }, () => take(what));
  const jobs = take('its number of jobs');
  countable(jobs);
  const capacity = list(take('its number of resources'), 'the capacities');
  const rows = Array.from({ length: jobs }, (_, i) => {
    const at = words[next]?.at ?? 0;
    const duration = take(`job ${i + 1} of ${jobs}`);
    const needs = list(capacity.length, `the requests of job ${i + 1}`);
    const after = list(take(`what comes after job ${i + 1}`), `what comes after job ${i + 1}`).map((j) => j - 1);
    return { at, duration, needs, after };
  });
  if (next < words.length)
    throw new Error(`line ${words[next]?.at}: “${words[next]?.number}” stands after the last of ${jobs} jobs`);
  const instance = {
    durations: rows.map((r) => r.duration),
    needs: rows.map((r) => r.needs),
    after: rows.map((r) => r.after),
    capacity,
  };
  const line = (job: number): number => rows[job]?.at ?? 0;
  checkInstance(instance, { order: line, asks: line });
  return instance;
}
