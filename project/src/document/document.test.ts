import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  applyEdit,
  canonicalJson,
  emptyProject,
  hashOf,
  inverse,
  openProject,
  type Project,
  resolveProject,
  rootNode,
  type SchemaNode,
  schemaPaths,
  valueAt,
} from '../index.ts';

const old = new URL('../../test/old/', import.meta.url);
const tern = readFileSync(new URL('v1-tern-ledge.json', old), 'utf8');
const open = (value: unknown) => openProject(JSON.stringify(value));
const codes = (text: string) => openProject(text).problems.map((p) => `${p.grade} ${p.code} ${p.path.join('.')}`);
const project = (house: unknown) => JSON.stringify({ schema: 1, house });
const is = (value: unknown) => ({ value, known: 'measured' });

describe('what is refused', () => {
  it('names its field and its limit in the units people write, not in those of the document', () => {
    const path = ['site', 'coldNight'];
    const { problems } = applyEdit(emptyProject, { device: 'd', seq: 1, path, before: undefined, after: is(204) });
    // 40 °C is 104 °F, by the definition of the degree Fahrenheit.
    expect(problems.map((p) => p.mend)).toEqual(['Coldest normal night cannot be above 104 °F · 40 °C.']);
  });
});

describe('opening a file', () => {
  it.each(readdirSync(old))('%s, kept since its release, opens without a question', (name) => {
    expect(openProject(readFileSync(new URL(name, old), 'utf8'))).toMatchObject({ ok: true, problems: [] });
  });

  it.each([
    ['nothing', '', 'refused not-json '],
    ['a truncated file', tern.slice(0, 5000), 'refused not-json '],
    ['binary', 'PK\u0003\u0004\u0000\u0000', 'refused not-text '],
    ['a list', '[]', 'refused not-a-project '],
    ['another JSON file', '{"name":"x"}', 'refused not-a-project '],
    ['a later version', '{"schema":2}', 'refused newer-version schema'],
    ['deep nesting', `{"schema":1,"x":${'['.repeat(200)}${']'.repeat(200)}}`, 'refused too-deep x.0.0.0'],
    ['a forbidden key', '{"schema":1,"house":{"__proto__":{"x":1}}}', 'refused forbidden-key house.__proto__'],
    ['a key twice', '{"schema":1,"house":{},"house":{}}', 'refused duplicate-key house'],
    [
      'infinity',
      '{"schema":1,"house":{"floorArea":{"value":1e400,"known":"measured"}}}',
      'refused not-finite house.floorArea.value',
    ],
    ['a negative area', project({ floorArea: is(-3) }), 'refused impossible house.floorArea.value'],
    ['a text for a number', project({ floorArea: is('95') }), 'refused wrong-type house.floorArea.value'],
    [
      'a range that falls',
      project({ floorArea: is({ low: 9, likely: 5, high: 8 }) }),
      'refused range-order house.floorArea.value',
    ],
    ['an unknown answer', project({ era: 'last-week' }), 'refused not-an-option house.era'],
    ['a bad id', project({ rooms: { 'Big Room!': {} } }), 'refused bad-id house.rooms.Big Room!'],
    ['an implausible area, kept', project({ floorArea: is(9000) }), 'ask implausible house.floorArea'],
    [
      'a dangling reference, kept',
      project({ surfaces: { w: { room: 'gone' } } }),
      'ask dangling-reference house.surfaces.w.room',
    ],
    ['an unknown field, kept', project({ turret: 1 }), 'ask unknown-field house.turret'],
  ])('%s', (_name, text, code) => {
    expect(codes(text)).toEqual([code]);
    for (const p of openProject(text).problems) expect(p.mend.length).toBeGreaterThan(10);
  });

  it('unknown fields survive opening and saving', () => {
    const opened = open({ schema: 1, house: { turret: { windows: 3 } } });
    expect(opened.ok && JSON.stringify(opened.project)).toContain('"turret":{"windows":3}');
  });

  it('never throws on a damaged project, and never gives a number that is none', () => {
    fc.assert(
      fc.property(
        fc.nat(tern.length - 1),
        fc.constantFrom('', '0', '"', '{', '}', '-', 'e', '\u0000', 'null'),
        (at, piece) => {
          const opened = openProject(tern.slice(0, at) + piece + tern.slice(at + 1));
          return opened.ok || opened.problems.length > 0;
        },
      ),
      { seed: 20261125, numRuns: 400 },
    );
  });
});

describe('edits', () => {
  const start = openProject(tern);
  if (!start.ok) throw new Error('the kept project opens');
  const path = ['house', 'rooms', 'bath', 'height'];
  const edit = (after: unknown, over: Project = start.project) => ({
    device: 'a',
    seq: 1,
    path,
    before: valueAt(over, path),
    after,
  });

  it('change one place, share the rest, and can be taken back', () => {
    const one = edit(is(2.5));
    const { value, problems } = applyEdit(start.project, one);
    expect(problems).toEqual([]);
    expect(valueAt(value, path)).toEqual(is(2.5));
    expect(value.candidates).toBe(start.project.candidates);
    expect(canonicalJson(applyEdit(value, inverse(one, 2)).value)).toBe(canonicalJson(start.project));
  });

  it.each([
    ['an impossible value', edit(is(-1)), 'impossible'],
    ['a wrong type', edit(5), 'wrong-type'],
    ['an old before', { ...edit(is(2.5)), before: is(9) }, 'conflict'],
    ['no such field', { ...edit(is(1)), path: ['house', 'turret'], before: undefined }, 'unknown-field'],
    ['a forbidden key', { ...edit(is(1)), path: ['__proto__', 'x'], before: undefined }, 'unknown-field'],
  ])('refuse %s and leave the project as it was', (_name, bad, code) => {
    const { value, problems } = applyEdit(start.project, bad);
    expect(value).toBe(start.project);
    expect(problems[0]?.code).toBe(code);
  });

  it('remove and add entries of a map', () => {
    const room = ['house', 'rooms', 'attic-den'];
    const added = applyEdit(start.project, {
      device: 'a',
      seq: 1,
      path: room,
      before: undefined,
      after: { name: 'Den' },
    });
    expect(added.problems).toEqual([]);
    const gone = applyEdit(added.value, { device: 'a', seq: 2, path: room, before: { name: 'Den' }, after: undefined });
    expect(canonicalJson(gone.value)).toBe(canonicalJson(start.project));
  });
});

describe('the schema', () => {
  it('gives every quantity a kind, a label, a plausible range, and either a default or who needs it', () => {
    const look = (node: SchemaNode, at: string): string[] =>
      Object.entries(node.children).flatMap(([key, { meta, ...child }]) => {
        const here = `${at}.${key}`;
        const wants =
          meta.node === 'quantity'
            ? [meta.kind, meta.plausible, meta.usually].every((x) => x !== undefined) &&
              (meta.default === undefined) !== (meta.neededBy === undefined)
            : true;
        return [...(wants && meta.label.length > 0 ? [] : [here]), ...look({ meta, ...child }, here)];
      });
    expect(look(rootNode, '')).toEqual([]);
    expect(schemaPaths().length).toBeGreaterThan(150);
  });

  it('computes defaults and writes none', () => {
    const { house } = resolveProject(emptyProject);
    expect(house.setpoints.heating).toMatchObject({ likely: 20, known: 'assumed' });
    expect(house.floorArea).toMatchObject({ missing: true, path: 'house.floorArea' });
    expect(emptyProject).toEqual({ schema: 1 });
  });
});

describe('canonical text', () => {
  it('is the same for equal values and hashes as SHA-256', () => {
    expect(canonicalJson({ b: -0, a: [1, undefined], c: undefined })).toBe('{"a":[1,null],"b":0}');
    // FIPS 180-4 example "abc".
    expect(hashOf('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });
});
