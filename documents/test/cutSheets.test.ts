import { evaluate, runJob } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { cutListCsv } from '../src/cutSheet/cutListCsv.ts';
import { cutSheetsOf } from '../src/cutSheet/cutSheetSvg.ts';
import { laidSheets } from '../src/cutSheet/laidSheets.ts';
import { planSet, printPlanSet } from '../src/planSet/index.ts';
import { demo } from './demos.ts';
import { fonts, readPdf } from './paper.ts';

const project = demo('tern-ledge');
const job = evaluate(project, {}, { units: 'us' }).wanted.find((j) => j.kind === 'materials/cut-plan');
if (!job) throw new Error('the demonstration asks for its pieces');
const results = { [job.key]: runJob(job, { blob: () => undefined, tell: () => undefined }) };
const { plan } = evaluate(project, results, { units: 'us' });

/** Inches as a tape reads them, by the rule of its own: feet, whole inches, a fraction. */
function inches(text: string): number {
  const [, feet = '0', rest = ''] = /^(?:(\d+)' ?)?(?:([\d /]+)")?$/.exec(text) ?? [];
  const parts = rest.split(' ').filter(Boolean);
  const sum = parts.reduce(
    (a, p) => a + (p.includes('/') ? Number(p.split('/')[0]) / Number(p.split('/')[1]) : Number(p)),
    0,
  );
  return 12 * Number(feet) + sum;
}

describe('the cut sheets of the demonstration', () => {
  const laid = laidSheets(plan);

  it('print each on a page of its own, and every fold is read back within a thirty-second of an inch', async () => {
    const { pages, outline } = await readPdf(
      await printPlanSet(planSet({ plan, project, units: 'us' }, 'plain', ['drawings']), fonts),
    );
    expect(outline).toEqual(
      expect.arrayContaining(['Cut sheet: duct board 1 of 2', 'Cut sheet: duct board 2 of 2', 'Cut list']),
    );
    const sheets = pages.filter((p) => p.text.includes('Seen from the side that is cut'));
    const plywood = pages.filter((p) => p.text.includes('Saw outdoors or with a mask'));
    expect([sheets.length, plywood.length]).toEqual([2, 1]);
    expect(laid.map((l) => l.of)).toEqual(['board', 'board', 'panel']);
    // What lies behind a large sheet is on the set's own paper again.
    for (const page of pages)
      if (![...sheets, ...plywood].includes(page)) expect([page.width, page.height]).toEqual([612, 792]);
    sheets.forEach((page, i) => {
      expect([page.width, page.height].map((x) => Math.round((x * 25.4) / 72))).toEqual([432, 279]);
      const said = [...page.text.matchAll(/fold ((?:\d+' ?)?(?:[\d /]+")?)/g)].map((m) => inches((m[1] ?? '').trim()));
      const wanted = (laid[i]?.pieces ?? []).flatMap(({ piece }) =>
        piece.lines.filter((l) => l.kind === 'groove').map((l) => l.from[0] / 0.0254),
      );
      expect(said).toHaveLength(wanted.length);
      for (const [k, x] of wanted.entries())
        expect(Math.abs((said[k] ?? 0) - x), `fold ${k}`).toBeLessThan(1 / 32 + 1e-9);
      // 100 mm and 4 in to prove the print, and the hazard of the fibre.
      expect(page.text).toContain('100 mm');
      expect(page.text).toContain('Glass fibre');
    });
  });

  it('print the corners of slanting pieces so that they are read back within a thirty-second of an inch', async () => {
    const { pages } = await readPdf(
      await printPlanSet(planSet({ plan, project, units: 'us' }, 'plain', ['drawings']), fonts),
    );
    const sheets = pages.filter((p) => p.text.includes('Seen from the side that is cut'));
    laid.forEach((sheet, i) => {
      const text = (sheets[i]?.text ?? '').replace(/\s+/g, ' ');
      for (const marked of sheet.pieces.filter((p) => p.title.startsWith('Unit to'))) {
        const { outline } = marked.piece;
        const row = text.match(
          new RegExp(` ${marked.mark} (1: .*? ${outline.length}: [^,]+, [^;]+?")(?: [A-Z] |  ?\\w| \\d)`),
        );
        const said = [...(row?.[1] ?? '').matchAll(/\d+: ([^,;]+), ([^;]+?")/g)].map((m) =>
          [m[1], m[2]].map((x) => inches(x ?? '')),
        );
        expect(said, marked.title).toHaveLength(outline.length);
        outline.forEach(([x, y], k) => {
          const wanted = (marked.lies.turned ? [y, x] : [x, y]).map((v) => v / 0.0254);
          for (const [j, v] of wanted.entries()) expect(Math.abs((said[k]?.[j] ?? 99) - v)).toBeLessThan(1 / 32 + 1e-9);
        });
      }
    });
  });

  it('draw every piece true to scale: outlines measured on the paper are the pieces themselves', () => {
    for (const units of ['us', 'si'] as const)
      cutSheetsOf(plan, project, units).forEach(({ svg }, i) => {
        const ratio = Number(/data-scale="([\d.]+)"/.exec(svg)?.[1]);
        const drawn = [...svg.matchAll(/<polygon points="([^"]+)" class="edge"/g)].map((m) => {
          const spots = (m[1] ?? '').split(' ').map((p) => p.split(',').map(Number));
          const span = (k: 0 | 1) =>
            Math.max(...spots.map((p) => p[k] ?? 0)) - Math.min(...spots.map((p) => p[k] ?? 0));
          return [span(0), span(1)];
        });
        const pieces = laid[i]?.pieces ?? [];
        expect(drawn).toHaveLength(pieces.length);
        pieces.forEach(({ lies }, k) => {
          expect(Math.abs((drawn[k]?.[0] ?? 0) - (1000 * lies.width) / ratio)).toBeLessThan(0.01);
          expect(Math.abs((drawn[k]?.[1] ?? 0) - (1000 * lies.height) / ratio)).toBeLessThan(0.01);
        });
      });
  });

  it('list as plain millimetres what the drawing shows, each hole with the duct it is for', () => {
    const csv = cutListCsv(plan, 'si');
    expect(csv.split('\r\n')[0]).toContain('Sideways mm');
    for (const { pieces } of laid)
      for (const { holes } of pieces)
        for (const h of holes) {
          const row = csv.split('\r\n').find((l) => l.includes(`Hole for “${h.name}”`));
          expect(row, h.name).toContain(`${Math.round(h.sideways * 10000) / 10},${Math.round(h.up * 10000) / 10}`);
        }
  });

  it('say the same twice, to the last byte', () => {
    expect(cutSheetsOf(plan, project, 'us')).toEqual(cutSheetsOf(structuredClone(plan), project, 'us'));
  });
});
