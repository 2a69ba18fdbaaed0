import { readFileSync } from 'node:fs';
import { evaluate } from '@kneewall/engine';
import { emptyProject, openProject, type Project, readPrices, splitTable } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { csvCell, materialsCsv, materialsJson } from './index.ts';

const opened = openProject(readFileSync(new URL('../../demos/tern-ledge.json', import.meta.url), 'utf8'));
const tern: Project = opened.ok ? opened.project : emptyProject;

describe('cells of a shopping list', () => {
  it.each([
    ['=1+1', "'=1+1"],
    [' @x', "' @x"],
    ['＝cmd', "'＝cmd"],
    ['12 in "round"', '"12 in ""round"""'],
    ['a,b', '"a,b"'],
    ['plain', 'plain'],
  ])('%j is written as %j', (text, cell) => {
    expect(csvCell(text)).toBe(cell);
  });
});

describe('the shopping list as a table', () => {
  // A price of this name is taken for the board, and its name goes into the table.
  const payload = '=HYPERLINK("http://x.invalid","Duct board")';
  const project = {
    ...tern,
    work: {
      ...tern.work,
      prices: { p: { name: payload, line: 'air/board', unit: 'sheet', price: { value: 54, known: 'estimated' as const } } },
    },
  } satisfies Project;
  const { plan } = evaluate(project, {});

  it('has a row for each thing, the same heads, and no cell that a spreadsheet would run', () => {
    const rows = splitTable(materialsCsv(plan, 'us')).filter((r) => r.length > 1);
    const list = plan.trades.materials?.list;
    expect(list?.ok && list.value.lines.length).toBe(rows.length - 1);
    const head = rows[0] ?? [];
    for (const row of rows) expect(row.length).toBe(head.length);
    expect(rows.flat().filter((c) => /^[=+\-@＝]/.test(c))).toEqual([]);
    expect(rows.find((r) => r[head.indexOf('Line')] === 'air/board')?.[head.indexOf('Price taken')]).toBe(
      `'${payload}`,
    );
  });

  it('taken back in as prices gives the names as they were, without the guard', () => {
    const { taken } = readPrices(materialsCsv(plan, 'us'), {
      name: 'Price taken',
      price: 'Costs likely',
      line: 'Line',
    });
    expect(taken.find((t) => t.entry.line === 'air/board')?.entry).toMatchObject({
      name: payload,
      price: { value: 54 },
    });
  });

  it('is whole as JSON, and nothing where there is no list', () => {
    const json = JSON.parse(materialsJson(plan) ?? '{}');
    expect(json.lines.length).toBeGreaterThan(40);
    expect(materialsJson(evaluate({ schema: 1 }, {}).plan)).toBeUndefined();
    expect(materialsCsv(evaluate({ schema: 1 }, {}).plan, 'si').split('\r\n').length).toBe(2);
  });
});
