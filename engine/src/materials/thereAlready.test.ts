import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { drawnPieces } from '../air/drawnPieces.ts';
import { materials as airLines } from '../air/materials.ts';
import { airModel } from '../air/model.ts';
import type { AirResult } from '../air/result.ts';
import { tasks as airTasks } from '../air/tasks.ts';
import { thereOf } from '../air/there.ts';
import { scenario } from '../plan/scenario.ts';
import { inputsOf } from './cutting/inputsOf.ts';

const q = (value: number) => ({ value, known: 'measured' });
const fittings = { e: { kind: 'elbow-round', count: q(2) } };
const sections = {
  box: { kind: 'board', width: q(0.5), height: q(0.3), length: q(1.2) },
  trunk: { kind: 'rectangular', width: q(0.4), height: q(0.2), length: q(5) },
  metal: { kind: 'round', from: 'trunk', diameter: q(0.2), length: q(4), fittings },
  soft: { kind: 'flexible', from: 'box', diameter: q(0.2), length: q(4) },
  back: { kind: 'board', side: 'return', width: q(0.5), height: q(0.3), length: q(1) },
};
const terminals = Object.fromEntries(
  Object.keys(sections).map((id) => [`at-${id}`, { section: id, room: 'r', width: q(0.3), height: q(0.15) }]),
);
const blower = {
  filterIncluded: true,
  tables: [{ setting: '', points: [0, 1].map((flow) => ({ flow, pressure: 9 })) }],
} as unknown as Parameters<typeof airModel>[1];

/** Lines of the air trade and what is cut, with that said of some sections, some registers, and items. */
function asked(
  said: Record<string, string>,
  kept: readonly string[] = [],
  items: object = {},
  unhung: readonly string[] = [],
) {
  const all = (of: object, more: (id: string) => object) =>
    Object.fromEntries(Object.entries(of).map(([id, x]) => [id, { ...x, ...more(id) }]));
  const ducts = {
    sections: all(sections, (id) => ({
      ...(said[id] ? { already: said[id] } : {}),
      ...(unhung.includes(id) ? { hung: 'no' } : {}),
    })),
    terminals: all(terminals, (id) => (kept.includes(id) ? { already: 'kept' } : {})),
    filter: { width: q(0.5), height: q(0.5) },
  };
  const rooms = { r: { name: 'R' } };
  const opened = openProject(JSON.stringify({ ...emptyProject, house: { rooms }, items, routes: { ducts } }));
  if (!opened.ok) throw new Error('it opens');
  const project = resolveProject(opened.project);
  const there = thereOf(project);
  const result = {
    ...{ model: { ok: true, value: airModel(project.routes.ducts, blower, 101_325, scenario()) } },
    ...{ shut: { ok: false }, there, fittings: drawnPieces(project.routes.ducts, there, scenario()) },
  } as unknown as AirResult;
  const lines = airLines(result);
  const cut = inputsOf(project);
  return {
    lines,
    tasks: airTasks(result),
    amount: (id: string) =>
      lines.reduce((sum, l) => sum + (l.id === `air/${id}` || l.id.startsWith(`air/${id}:`) ? l.amount : 0), 0),
    cut: [...cut.boxes, ...cut.ducts, ...cut.pipes.flatMap((p) => p.runs), ...cut.bags.flatMap((b) => b.runs)].map(
      (x) => x.id,
    ),
  };
}
const every = (value: string) => Object.fromEntries(Object.keys(sections).map((id) => [id, value]));

describe('what is there already', () => {
  it('is neither bought nor cut, section by section, whatever says so', () => {
    for (const id of Object.keys(sections)) {
      const item = { i: { state: 'fitted', of: `routes.ducts.sections.${id}` } };
      for (const made of [asked({ [id]: 'kept' }), asked({ [id]: 'patched' }), asked({}, [], item)]) {
        // A damper that is put into an old run is new.
        const own = made.lines.filter((l) => l.for === `routes.ducts.sections.${id}`);
        expect(own.filter((l) => !l.id.startsWith('air/damper:'))).toEqual([]);
        expect(made.cut).not.toContain(id);
        // Everything else is.
        for (const other of Object.keys(sections).filter((x) => x !== id)) expect(made.cut).toContain(other);
      }
      const register = asked({}, [`at-${id}`]);
      expect(register.lines.some((l) => l.id === `air/face:at-${id}`)).toBe(false);
      expect(register.lines.filter((l) => l.id.startsWith('air/face:')).length).toBe(4);
    }
  });

  it('takes nothing to hang or join, and only what seals it where its joints are patched', () => {
    const [kept, patched, fresh] = [asked(every('kept')), asked(every('patched')), asked({})];
    const words = ['hangers', 'metal-hangers', 'boots', 'box-board', 'elbow-round', 'collars:soft'];
    for (const word of words) expect([word, kept.amount(word), patched.amount(word)]).toEqual([word, 0, 0]);
    expect([kept.amount('mastic'), kept.amount('tape')]).toEqual([0, 0]);
    expect(patched.amount('mastic')).toBeCloseTo(fresh.amount('mastic'), 12);
    expect(patched.amount('tape')).toBeCloseTo(fresh.amount('tape'), 12);
    expect(kept.cut).toEqual([]);
    // Of an elbow's run alone its elbows go.
    expect([fresh.amount('elbow-round'), asked({ metal: 'kept' }).amount('elbow-round')]).toEqual([2, 0]);
  });

  it('hangs as it is: hangers and the task are for new runs, and for old ones whose hangers are missing', () => {
    const task = (of: ReturnType<typeof asked>, id: string) => of.tasks.find((t) => t.id === `air/${id}`);
    const kept = every('kept');
    // Flexible 4 m at 1.2 m: four saddles. Metal 4 and 5 m at 2.4 m: two and three straps.
    expect(asked(kept, [], {}, ['soft']).amount('hangers')).toBe(4);
    expect(asked(kept, [], {}, ['metal', 'trunk']).amount('metal-hangers')).toBe(5);
    expect(task(asked(kept), 'hang')).toBeUndefined();
    expect(task(asked(kept, [], {}, ['soft']), 'hang')?.parts).toBe(1);
    expect(task(asked({}), 'hang')?.parts).toBe(5);
    expect(task(asked({ soft: 'kept' }), 'hang')?.duration.likely).toBe(4 * 35 * 60);
    expect([task(asked(kept), 'seal'), task(asked(every('patched')), 'seal')?.parts]).toEqual([undefined, 5]);
    // What is ticked while it is hung keeps its parts.
    const item = { i: { state: 'fitted', of: 'routes.ducts.sections.soft' } };
    expect(task(asked({}, [], item), 'hang')?.parts).toBe(5);
    // Nothing waits for a task that is not there.
    for (const made of [asked({}), asked(kept), asked(every('patched')), asked(every('replaced'))]) {
      const ids = made.tasks.map((t) => t.id);
      for (const t of made.tasks) for (const before of t.after) expect(ids).toContain(before);
    }
  });

  it('is bought and cut like new where it is made new, after the old one was taken out', () => {
    const [old, fresh] = [asked({ ...every('kept'), soft: 'replaced' }), asked({ ...every('kept'), soft: 'new' })];
    expect(old.lines).toEqual(fresh.lines);
    expect(old.cut).toEqual(['soft']);
    const out = old.tasks.find((t) => t.id === 'air/take-out');
    expect([out?.parts, out?.duration.likely, out?.what.includes('soft')]).toEqual([1, 30 * 60, true]);
    expect(old.tasks.find((t) => t.id === 'air/hang')?.after).toEqual(['air/take-out']);
    expect(fresh.tasks.some((t) => t.id === 'air/take-out')).toBe(false);
  });
});

describe('what new ducts take besides', () => {
  it('a collar at each end that has no boot, and bands for jackets and for the core at a boot', () => {
    const fresh = asked({});
    // From its box to its register's boot: one collar; two jacket bands and one for the core at the boot.
    expect([fresh.amount('collars:soft'), fresh.amount('bands')]).toEqual([1, 3]);
    expect(asked({ soft: 'kept' }).amount('bands')).toBe(0);
  });

  it('wrap round new metal in the attic: its perimeter and a foot, along all of it', () => {
    const trunk = (2 * (0.4 + 0.2) + 0.3048) * 5;
    const metal = (Math.PI * 0.2 + 0.3048) * 4;
    expect(asked({}).amount('wrap')).toBeCloseTo(trunk + metal, 9);
    expect(asked({ trunk: 'patched' }).amount('wrap')).toBeCloseTo(metal, 9);
    expect(asked(every('kept')).amount('wrap')).toBe(0);
  });
});
