import { readFileSync } from 'node:fs';
import { openProject, type Project } from '@kneewall/project';

/** A demo as its file stands. */
export function demo(name: 'tern-ledge' | 'juniper-flat'): Project {
  const text = readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), 'utf8');
  const opened = openProject(text);
  if (!opened.ok) throw new Error(`${name} does not open: ${JSON.stringify(opened.problems[0])}`);
  return opened.project;
}

/** The third demo is not among them: it is Tern Ledge again, with readings, and would take as long once more. */
export const demoNames = ['tern-ledge', 'juniper-flat'] as const;

/** Every number anywhere in a value, with its place. */
export function* numbersIn(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (ArrayBuffer.isView(value)) return;
  else if (value !== null && typeof value === 'object')
    for (const [key, below] of Object.entries(value)) yield* numbersIn(below, `${path}.${key}`);
}

/** Nothing in it may be changed by whoever gets it. */
export function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value) && !ArrayBuffer.isView(value)) {
    Object.freeze(value);
    for (const below of Object.values(value)) frozen(below);
  }
  return value;
}
