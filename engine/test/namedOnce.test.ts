import { openProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { evaluate } from '../src/index.ts';
import { demo } from './demos.ts';

/** A part of a document with nothing measured in it. */
const unmeasured = (part: unknown): unknown =>
  part === null || typeof part !== 'object' || Array.isArray(part)
    ? part
    : Object.fromEntries(
        Object.entries(part).flatMap(([k, v]) =>
          v !== null && typeof v === 'object' && 'known' in v && 'value' in v ? [] : [[k, unmeasured(v)]],
        ),
      );

/** Words that stand more than once, with how often. */
const twice = (words: readonly string[]): string[] => words.filter((w, i) => words.indexOf(w) !== i);

it.each([undefined, 'candidates', 'routes', 'house', 'work'] as const)(
  'no two statements, tasks or needs of Tern Ledge read alike, with nothing measured of: %s',
  (part) => {
    const project = demo('tern-ledge');
    const opened = openProject(JSON.stringify(part ? { ...project, [part]: unmeasured(project[part]) } : project));
    if (!opened.ok) throw new Error('it opens');
    const { findings, tasks, materials } = evaluate(opened.project, {}, { units: 'us' }).plan;
    expect(findings.length).toBeGreaterThan(50);
    expect(twice(findings.map((f) => f.what))).toEqual([]);
    expect(twice(tasks.map((t) => t.what))).toEqual([]);
    expect(twice(materials.map((m) => m.what))).toEqual([]);
  },
);
