import type { Plan } from '@kneewall/engine';
import { type Project, printQuantity, resolveProject, type System } from '@kneewall/project';
import { printBars } from '../sheet/bars.ts';
import { margin, paperFor } from '../sheet/paper.ts';
import { notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';
import { type TrapPicture, trapPicture } from './trapPicture.ts';

const style = [
  '.pipe{fill:none;stroke:#000;stroke-linejoin:miter}.bore{fill:none;stroke:#fff;stroke-linejoin:miter}',
  '.water{fill:#ccc}.measure{stroke:#000;stroke-width:.3}.casing{fill:none;stroke:#000;stroke-width:1}',
].join('');
/** mm of a pipe's wall. */
const wall = 3;
/** mm that head, bars and notes take. */
const aroundDrawing = 62;

/** The trap of a plan in mm; undefined where its height is not known. */
export function trapOf(
  plan: Plan,
  project: Project,
): { picture: TrapPicture; inner: number; outer: number } | undefined {
  const trap = plan.trades.condensate?.trap;
  const { size } = resolveProject(project).routes.drain;
  if (!trap?.ok || 'missing' in size) return undefined;
  const inner = 1000 * size.likely;
  const outer = inner + 2 * wall;
  const picture = trapPicture({ drop: 1000 * trap.value.drop, seal: 1000 * trap.value.seal, inner, outer });
  return { picture, inner, outer };
}

/**
 * The trap of the drain at full size, as one SVG sheet: pipe may be held against it. Undefined where its height is not
 * known. Equal plans give equal bytes.
 */
export function trapSvg(plan: Plan, project: Project, units: System): string | undefined {
  const found = trapOf(plan, project);
  if (!found) return undefined;
  const { picture, inner, outer } = found;
  const notes = notesOf(plan, project, units);
  const paper = paperFor(units, aroundDrawing, picture.box.bottom - picture.box.top);
  const [x, y] = [margin + 8 - picture.box.left, margin + 22 - picture.box.top];
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: 'The trap of the condensate drain, from the side',
      how: `Full size (1:1). Sheet: ${paper.name}. Measure the bars before you hold pipe against it.`,
    },
    { style, scale: '1' },
    element(
      'g',
      { transform: `translate(${x.toFixed(2)} ${y.toFixed(2)})` },
      element('polyline', { points: pointsOf(picture.cabinet), class: 'casing' }),
      ...picture.pipe.map((p) => line(p, 'pipe', outer)),
      ...picture.bore.map((p) => line(p, 'bore', inner)),
      element('polygon', { points: pointsOf(picture.water), class: 'water' }),
      ...picture.measures.map((m) => measure(m, units)),
      ...picture.names.map(({ at, text, anchor }) =>
        element('text', { x: at[0], y: at[1], 'text-anchor': anchor }, words(text)),
      ),
    ),
    printBars(margin + 2, paper.height - margin - notesHeight(notes) - 16),
    ...notesAt(paper.height - margin - notesHeight(notes) - 2, notes, 2),
  );
}

const line = (points: TrapPicture['pipe'][number], kind: string, width: number): Svg =>
  element('polyline', { points: pointsOf(points), class: kind, 'stroke-width': width });

function measure({ id, from, to, at, words: ends }: TrapPicture['measures'][number], units: System): Svg {
  const says = `${id} ${printQuantity((to - from) / 1000, 'length', units)}`;
  const tick = (y: number): Svg => element('line', { x1: at - 2, y1: y, x2: at + 12, y2: y, class: 'measure' });
  return element(
    'g',
    { class: 'of', 'data-measure': id, 'data-mm': to - from },
    element('line', { x1: at, y1: from, x2: at, y2: to, class: 'measure' }),
    tick(from),
    tick(to),
    element('text', { x: ends, y: (from + to) / 2 + 1, 'text-anchor': 'end' }, words(says)),
  );
}

function notesOf(plan: Plan, project: Project, units: System): string[] {
  const { condensate } = plan.trades;
  const pressure = condensate?.pressure.ok
    ? printQuantity(condensate.pressure.value.high, 'pressure', units)
    : 'unknown';
  return [
    'The maker’s instructions and the local code come before this sheet. Print at 100 %: full size or not at all.',
    'Primer and cement give off fumes that burn: air from outside, no flame, no pilot light. Power locked off.',
    `Drawn with the unit off and water standing. For ${pressure} of ${condensate?.pulls === false ? 'pressure' : 'suction'} at the drain, a loaded filter and a wet coil counted.`,
    ...(project.about?.invented
      ? ['All data on this sheet are invented: no place, product or price in it is real.']
      : []),
  ];
}
