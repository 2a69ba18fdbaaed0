import { evaluate } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { listsOf } from '../src/index.ts';
import { demo } from './demos.ts';

/** RFC 4180 read back: rows of cells, quotes taken off. */
function rowsOf(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^,\r\n"]*))(,|\r\n)/g)) {
    rows.at(-1)?.push(quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'));
    if (end !== ',') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

describe('the lists of a plan as tables', () => {
  const project = structuredClone(demo('tern-ledge')) as unknown as {
    house: { rooms: Record<string, { name: string }> };
  };
  const [room] = Object.values(project.house.rooms);
  if (room) room.name = '=HYPERLINK("x"), "north"';
  const { plan } = evaluate(project as never, {}, { units: 'us' });
  const lists = new Map(listsOf(plan, project as never, 'us').map((l) => [l.file, rowsOf(l.csv)]));
  const column = (file: string, head: string): string[] => {
    const [heads = [], ...rows] = lists.get(file) ?? [];
    const at = heads.indexOf(head);
    expect(at, `${file} ${head}`).toBeGreaterThanOrEqual(0);
    return rows.map((row) => row[at] ?? '');
  };

  it('hold every check, task, reading and room once, each row as wide as the heads', () => {
    expect(column('checks.csv', 'Id').toSorted()).toEqual(plan.findings.map((f) => f.id).toSorted());
    expect(column('tasks.csv', 'Id')).toEqual(plan.tasks.map((t) => t.id));
    expect(column('readings.csv', 'Id')).toEqual(plan.readings.map((r) => r.id));
    expect(column('rooms.csv', 'Room')).toHaveLength(Object.keys(project.house.rooms).length);
    for (const [file, [heads, ...rows]] of lists) for (const row of rows) expect(row.length, file).toBe(heads?.length);
  });

  it('write numbers as they are, below nought too, and guard text that would start a formula', () => {
    const low = column('checks.csv', 'Low');
    const ids = column('checks.csv', 'Id');
    const least = plan.findings.flatMap(({ id, value }) => {
      if (value === undefined) return [];
      return [{ id, low: typeof value === 'number' ? value : value.low }];
    });
    const negative = least.filter((f) => f.low < 0);
    expect(negative.length).toBeGreaterThan(0);
    for (const f of negative) expect(Number(low[ids.indexOf(f.id)])).toBe(f.low);
    expect(column('rooms.csv', 'Room')).toContain('\'=HYPERLINK("x"), "north"');
    for (const rows of lists.values())
      for (const cell of rows.flat())
        if (/^\s*[=+@-]/.test(cell)) expect(Number.isFinite(Number(cell)), cell).toBe(true);
  });
});
