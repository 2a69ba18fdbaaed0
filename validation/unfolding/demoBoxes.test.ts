import { readFileSync } from 'node:fs';
import { evaluate, runJob } from '@kneewall/engine';
import { type FlatPiece, onSheet, type Spot } from '@kneewall/engine/physics';
import { openProject, type Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { missOf } from './refold.ts';

function cutOf(project: Project) {
  const job = evaluate(project, {}).wanted.find((j) => j.kind === 'materials/cut-plan');
  if (!job) throw new Error('its pieces are asked for');
  const found = { [job.key]: runJob(job, { blob: () => undefined, tell: () => undefined }) };
  const cut = evaluate(project, found).plan.trades.materials?.cut;
  if (!cut?.ok) throw new Error('its pieces are laid out');
  return cut.value;
}

const opened = openProject(readFileSync(new URL('../../demos/tern-ledge.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error('the demonstration opens');
const ternLedge = opened.project;

/** Where something lies on its sheet, back in the piece's own metres. */
const back =
  (piece: FlatPiece, placed: { x: number; y: number; turned: boolean }) =>
  ([x, y]: Spot): Spot =>
    placed.turned ? [y - placed.y, piece.size.height - (x - placed.x)] : [x - placed.x, y - placed.y];

/** Of each thickness: the pieces as they lie on their sheets, taken off them again. */
function takenOff(cut: ReturnType<typeof cutOf>): FlatPiece[] {
  return cut.sheets.flatMap(({ pieces, plan }) =>
    plan.sheets.flatMap((sheet) =>
      sheet.placed.flatMap((placed) => {
        const piece = pieces.find((p) => p.id === placed.piece);
        if (!piece) return [];
        const [lying, own] = [onSheet(piece, placed), back(piece, placed)];
        return [
          {
            ...piece,
            lines: lying.lines.map((l) => ({ ...l, from: tidy(own(l.from)), to: tidy(own(l.to)) })),
            holes: lying.holes.map((h) => ({ ...h, centre: own(h.centre) })),
          },
        ];
      }),
    ),
  );
}

/** Lines stay upright or level to the bit for the folding, which asks for that. */
const tidy = ([x, y]: Spot): Spot => [Math.round(x * 1e9) / 1e9, Math.round(y * 1e9) / 1e9];

describe('the boxes of a demonstration, from its document to its sheets and folded again', () => {
  const cut = cutOf(ternLedge);
  const pieces = takenOff(cut);

  it('have their entered inside sizes and their holes in place within a tenth of a millimetre', () => {
    expect(cut.boxes.map((b) => b.id)).toEqual(['supply-plenum', 'return-box']);
    for (const { box, flat, id } of cut.boxes) {
      const entered = ternLedge.routes?.ducts?.sections?.[id];
      expect([box.width, box.height, box.length]).toEqual(
        [entered?.width, entered?.height, entered?.length].map((q) => q?.value),
      );
      const own = pieces.filter((p) => p.id === id || p.id.startsWith(`${id} `));
      // Sides of the tube; its caps hold the holes of the far end.
      const openings = box.openings.filter((o) => o.side !== 'end');
      const folded = missOf(
        { ...box, openings, form: 'fewest', sheet: { width: 3.048, height: 1.2192 } },
        { ...flat, pieces: own },
        box.thickness / 2,
      );
      expect(folded, id).toBeLessThan(1e-4);
      const cap = own.find((p) => p.id === `${id} end`);
      for (const o of box.openings.filter((x) => x.side === 'end')) {
        const hole = cap?.holes.find((h) => h.id === o.id);
        expect(Math.abs((hole?.centre[0] ?? 0) - box.thickness - o.across)).toBeLessThan(1e-4);
        expect(Math.abs((hole?.centre[1] ?? 0) - box.thickness - o.along)).toBeLessThan(1e-4);
      }
    }
  });

  it('have a hole for every duct that joins them, of its size', () => {
    const sections = Object.entries(ternLedge.routes?.ducts?.sections ?? {});
    for (const { id, box } of cut.boxes) {
      const joining = sections.filter(([, x]) => x.from === id);
      expect(box.openings.map((o) => o.id).sort()).toEqual(joining.map(([own]) => own).sort());
      for (const [own, x] of joining)
        expect(box.openings.find((o) => o.id === own)?.shape).toEqual({ kind: 'round', diameter: x.diameter?.value });
    }
  });

  it('lie within their sheets apart from each other, on no more sheets than their area alone asks for', () => {
    for (const { plan } of cut.sheets) {
      for (const { placed, width, height } of plan.sheets)
        placed.forEach((p, i) => {
          expect(Math.min(p.x, p.y)).toBeGreaterThanOrEqual(-1e-9);
          expect(p.x + p.width).toBeLessThanOrEqual(width + 1e-9);
          expect(p.y + p.height).toBeLessThanOrEqual(height + 1e-9);
          for (const q of placed.slice(0, i)) {
            const apart =
              p.x >= q.x + q.width - 1e-9 ||
              q.x >= p.x + p.width - 1e-9 ||
              p.y >= q.y + q.height - 1e-9 ||
              q.y >= p.y + p.height - 1e-9;
            expect(apart).toBe(true);
          }
        });
      const area = plan.sheets.flatMap((s) => s.placed).reduce((a, p) => a + p.width * p.height, 0);
      const [sheet] = plan.sheets;
      expect(plan.sheets).toHaveLength(Math.ceil(area / ((sheet?.width ?? 0) * (sheet?.height ?? 0))));
      expect(plan.proved).toBe(true);
    }
  });
});
