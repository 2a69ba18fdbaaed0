import { wider, widerNumbers } from './grow.ts';
import type { Search } from './state.ts';

/** What is forgotten of the weights at each conflict. */
const fade = 0.95;

/** Counts an atom that had part in a conflict. */
export function bump(s: Search, view: number, k: number): void {
  const c = s.choice;
  const x = view >> 1;
  const value = (view & 1) === 1 ? -k : k - 1;
  if (value < 0) return;
  const { n, horizon } = s.w;
  const v = x < n ? s.w.table[x]!.prev[Math.min(value, horizon)]! : 0;
  if (v < 0) return;
  const key = x < n ? x * (horizon + 2) + v : n * (horizon + 2) + x - n;
  let id = c.idOf[key]!;
  if (id < 0) {
    id = fresh(s, x, v);
    c.idOf[key] = id;
  }
  c.weight[id]! += c.step;
  if (c.weight[id]! > 1e100) lighten(s);
  if (c.place[id]! >= 0) up(s, c.place[id]!);
}

function fresh(s: Search, x: number, v: number): number {
  const c = s.choice;
  if (c.ids + 1 >= c.variable.length) {
    c.variable = wider(c.variable);
    c.value = wider(c.value);
    c.heap = wider(c.heap);
    c.place = wider(c.place);
    c.weight = widerNumbers(c.weight);
  }
  const id = c.ids++;
  c.variable[id] = x;
  c.value[id] = v;
  c.weight[id] = 0;
  c.place[id] = -1;
  insert(s, id);
  return id;
}

export function fadeWeights(s: Search): void {
  s.choice.step /= fade;
}

function lighten(s: Search): void {
  const c = s.choice;
  for (let id = 0; id < c.ids; id++) c.weight[id]! *= 1e-100;
  c.step *= 1e-100;
}

function insert(s: Search, id: number): void {
  const c = s.choice;
  if (c.place[id]! >= 0) return;
  c.heap[c.heapSize] = id;
  c.place[id] = c.heapSize;
  up(s, c.heapSize++);
}

function heavier(s: Search, a: number, b: number): boolean {
  const w = s.choice.weight;
  return w[a]! > w[b]! || (w[a] === w[b] && a < b);
}

function up(s: Search, from: number): void {
  const { heap, place } = s.choice;
  const id = heap[from]!;
  let at = from;
  while (at > 0 && heavier(s, id, heap[(at - 1) >> 1]!)) {
    heap[at] = heap[(at - 1) >> 1]!;
    place[heap[at]!] = at;
    at = (at - 1) >> 1;
  }
  heap[at] = id;
  place[id] = at;
}

function down(s: Search): void {
  const c = s.choice;
  const { heap, place } = c;
  const id = heap[0]!;
  let at = 0;
  let child = 1;
  while (child < c.heapSize) {
    if (child + 1 < c.heapSize && heavier(s, heap[child + 1]!, heap[child]!)) child++;
    if (!heavier(s, heap[child]!, id)) break;
    heap[at] = heap[child]!;
    place[heap[at]!] = at;
    at = child;
    child = 2 * at + 1;
  }
  heap[at] = id;
  place[id] = at;
}

/** The weightiest atom that is neither true nor false; -1 where none is left. */
export function heaviestOpen(s: Search): number {
  const c = s.choice;
  let found = -1;
  while (found < 0 && c.heapSize > 0) {
    const id = c.heap[0]!;
    const x = c.variable[id]!;
    const v = c.value[id]!;
    if (s.bound[2 * x]! <= v && -s.bound[2 * x + 1]! > v) found = id;
    takeTop(s);
  }
  return found;
}

function takeTop(s: Search): void {
  const c = s.choice;
  const id = c.heap[0]!;
  c.place[id] = -1;
  c.heapSize--;
  if (c.heapSize > 0) {
    c.heap[0] = c.heap[c.heapSize]!;
    c.place[c.heap[0]!] = 0;
    down(s);
  }
  if (c.poppedCount + 1 >= c.popped.length) {
    c.popped = wider(c.popped);
    c.poppedLevel = wider(c.poppedLevel);
  }
  c.popped[c.poppedCount] = id;
  c.poppedLevel[c.poppedCount++] = s.level;
}

/** Atoms settled above a level are open again. */
export function reinsert(s: Search, level: number): void {
  const c = s.choice;
  while (c.poppedCount > 0 && c.poppedLevel[c.poppedCount - 1]! >= level) insert(s, c.popped[--c.poppedCount]!);
}
