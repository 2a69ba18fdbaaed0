import type { Plan } from '@kneewall/engine';
import { type Project, printQuantity, type System } from '@kneewall/project';
import { northArrow, printBars, scaleBar } from '../sheet/bars.ts';
import { margin, paperFor } from '../sheet/paper.ts';
import { type Scale, scaleFor } from '../sheet/scale.ts';
import { rowHeight, schedule } from '../sheet/schedule.ts';
import { headHeight, notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, type Svg } from '../sheet/svg.ts';
import { drawing } from './drawing.ts';
import { type DuctFacts, ductFacts } from './ductFacts.ts';
import { ductLabels, faceLabels, madeOf, orUnknown, sizeWords } from './ductWords.ts';
import { type DuctLayout, layOutDucts } from './layOut.ts';
import { notesOf } from './notes.ts';
import { pictureOf } from './onSheet.ts';
import { ductStyle } from './style.ts';

/** mm: letters of labels, half a register's mark, the least height of the drawing, and room round it for labels. */
const letters = 2.4;
const mark = 2.1;
const drawingLeast = 95;
const barsHeight = 14;
const gap = 3;

/**
 * The plan of the ducts as one SVG sheet sized in millimetres: to scale where every section has a way, else a
 * schematic that says so; sizes, flows, registers, a schedule, scale bars and cautions. Equal plans give equal bytes;
 * there is no date on it. Anything missing is written as unknown. Never throws on a valid project.
 */
export function ductPlanSvg(plan: Plan, project: Project, units: System): string {
  const facts = ductFacts(plan, project);
  const layout = layOutDucts(facts);
  const notes = notesOf(plan, project, layout);
  const tables = (facts.ducts.length + facts.faces.length + 2) * rowHeight + gap;
  const others = headHeight + barsHeight + tables + notesHeight(notes) + 3 * gap;
  const paper = paperFor(units, others, drawingLeast);
  const wide = paper.width - 2 * margin;
  const field = {
    x: margin,
    y: margin + headHeight,
    width: wide,
    height: paper.height - 2 * margin - others,
  };
  const scale = scaleOf(layout, units, [field.width, field.height]);
  const picture = pictureOf(layout, {
    field,
    perMetre: scale.perMetre,
    letters,
    mark,
    widthLeast: 0.4,
    ductTexts: (duct) => ductLabels(duct, units),
    faceTexts: (face) => faceLabels(face, units),
  });
  const below = field.y + field.height + gap;
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: 'The ducts in plan: sizes, flows and pressure lost',
      how: `${scale.words}. Sheet: ${paper.name}.`,
    },
    { style: ductStyle, scale: scale.ratio === undefined ? 'none' : String(scale.ratio) },
    drawing(picture, letters),
    ...(facts.north !== undefined && layout.scaled
      ? [northArrow(paper.width - margin - 7, margin + 9, facts.north)]
      : []),
    footer({ facts, units, notes, below, wide, ...(scale.ratio === undefined ? {} : { ratio: scale.ratio }) }),
  );
}

type SheetScale = { readonly perMetre: number; readonly ratio?: number; readonly words: string };

/** Labels stand partly outside the house: a drawing takes at most nineteen twentieths of its field. */
function scaleOf({ scaled, box }: DuctLayout, units: System, field: readonly [number, number]): SheetScale {
  const metres = [box.right - box.left, box.top - box.bottom] as const;
  const room = [field[0] * 0.95, field[1] * 0.95] as const;
  if (!scaled) {
    const perMetre = Math.min(room[0] / Math.max(metres[0], 1), room[1] / Math.max(metres[1], 1), 14);
    return { perMetre, words: 'Not to scale: a schematic' };
  }
  const scale: Scale = scaleFor(units, metres, room);
  return { perMetre: 1000 / scale.ratio, ratio: scale.ratio, words: `Scale ${scale.words}` };
}

type Footer = {
  readonly facts: DuctFacts;
  readonly units: System;
  readonly notes: readonly string[];
  readonly below: number;
  readonly wide: number;
  readonly ratio?: number;
};

function footer({ facts, units, notes, below, wide, ratio }: Footer): Svg {
  const metres = units === 'us' ? 10 * 0.3048 : 4;
  const half = wide / 100;
  const ductsAt = below + barsHeight;
  const facesAt = ductsAt + (facts.ducts.length + 1) * rowHeight + gap;
  const notesTop = facesAt + (facts.faces.length + 1) * rowHeight + gap;
  return element(
    'g',
    { class: 'sheet-foot' },
    ...(ratio === undefined
      ? []
      : [
          printBars(margin, below + 1.5),
          scaleBar(margin + 120, below + 4, { metres, ratio, says: printQuantity(metres, 'length', units) }),
        ]),
    schedule(
      margin,
      ductsAt,
      [
        { head: 'Duct', width: 7 * half },
        { head: 'Name', width: 24 * half },
        { head: 'Made of', width: 14 * half },
        { head: 'Size inside', width: 15 * half },
        { head: 'Length', width: 12 * half },
        { head: 'Flow', width: 9 * half },
        { head: 'Speed', width: 9 * half },
        { head: 'Lost', width: 10 * half },
      ],
      facts.ducts.map((d) => [
        d.tag,
        d.name,
        madeOf[d.kind],
        sizeWords(d.size, units),
        orUnknown(d.length, 'length', units),
        orUnknown(d.flow, 'flow', units),
        orUnknown(d.speed, 'velocity', units),
        orUnknown(d.drop, 'pressure', units),
      ]),
    ),
    schedule(
      margin,
      facesAt,
      [
        { head: 'Mark', width: 7 * half },
        { head: 'Register or grille', width: 29 * half },
        { head: 'In', width: 30 * half },
        { head: 'Face', width: 15 * half },
        { head: 'Flow', width: 9 * half },
        { head: 'Lost', width: 10 * half },
      ],
      facts.faces.map((f) => [
        f.tag,
        f.name,
        f.room ?? 'unknown',
        sizeWords(f.size, units),
        orUnknown(f.flow, 'flow', units),
        orUnknown(f.drop, 'pressure', units),
      ]),
    ),
    ...notesAt(notesTop, notes, 3),
  );
}
