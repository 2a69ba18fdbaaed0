import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { margin, paperFor } from '../sheet/paper.ts';
import { notesAt, notesHeight, sheetSvg, shortened } from '../sheet/sheet.ts';
import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';
import { type Branch, type OneLineFacts, oneLineFacts, type Place } from './oneLineFacts.ts';

type Spot = readonly [number, number];

/** mm: a box, the way between two rows of boxes, and a line of letters. */
const box = { width: 46, height: 15 } as const;
const gap = 12;
const lineHeight = 3.5;
const wireHeight = 26;

const style = [
  '.box{fill:#fff;stroke:#000;stroke-width:.5}.box-title{font-weight:700;font-size:3px;text-anchor:middle}',
  '.box-line{text-anchor:middle}.wire{fill:none;stroke:#000;stroke-width:.5}.link{stroke-dasharray:2 1}',
  '.bus{stroke:#000;stroke-width:1.4}.break{fill:#fff;stroke:#000;stroke-width:.4}',
].join('');

/**
 * The electrical one-line drawing as one SVG sheet: supply, panel, each circuit with its breaker, wires, disconnect and
 * unit, and the cable between the units. Not to scale. Undefined where no unit's wires are planned. Equal plans give
 * equal bytes.
 */
export function oneLineSvg(plan: Plan, project: Project, units: System): string | undefined {
  const facts = oneLineFacts(plan, project, units);
  if (!facts) return undefined;
  const notes = notesOf(project);
  const paper = paperFor(units, 0, 180);
  const middle = paper.width / 2;
  const top = margin + 22;
  const busAt = top + 2 * (box.height + gap) + 4;
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: 'The supply of the unit in one line: protection, wires, disconnects',
      how: `Not to scale. Sheet: ${paper.name}.`,
    },
    { style, scale: 'none' },
    ...sourcesAt(facts, middle, top, busAt),
    ...panelAt(facts.panel, middle, busAt),
    ...branchesAt(facts, middle, busAt),
    ...notesAt(paper.height - margin - notesHeight(notes) - 2, notes, 4),
  );
}

function notesOf(project: Project): string[] {
  return [
    'For planning and buying, not an approval. Electricity kills: isolate, lock off, wait, prove dead. The nameplate, the local code and',
    'a licensed electrician stand above this sheet. Bonding, grounding electrodes and protection against lightning are theirs to decide.',
    'A generator never feeds the panel without a transfer switch. A battery cannot be switched off at its terminals.',
    `Code that decides here: ${shortened(project.routes?.wires?.code ?? 'not named yet; ask the authority', 70)}.`,
    ...(project.about?.invented
      ? ['All data on this sheet are invented: no place, product or price in it is real.']
      : []),
  ];
}

/** Letters that a box is wide. */
const across = 30;

/** A line too long for a box as two, parted between words. */
function parted(line: string): string[] {
  if (line.length <= across) return [line];
  const at = line.lastIndexOf(' ', across);
  return at < 0 ? [shortened(line, across)] : [line.slice(0, at), shortened(line.slice(at + 1), across)];
}

function boxAt({ title, lines: said }: Place, [x, y]: Spot): Svg {
  const lines = said.flatMap(parted);
  const first = y - (lines.length * lineHeight) / 2 + 1;
  return element(
    'g',
    { class: 'place' },
    element('rect', {
      x: x - box.width / 2,
      y: y - box.height / 2,
      width: box.width,
      height: box.height,
      class: 'box',
    }),
    element('text', { x, y: first, class: 'box-title' }, words(title)),
    ...lines.map((line, i) => element('text', { x, y: first + (i + 1) * lineHeight, class: 'box-line' }, words(line))),
  );
}

const wire = (points: readonly Spot[], kind = 'wire'): Svg =>
  element('polyline', { points: pointsOf(points), class: kind });

const beside = ([x, y]: Spot, lines: readonly string[]): Svg[] =>
  lines.map((line, i) => element('text', { x: x + 2.5, y: y + i * lineHeight }, words(line)));

/** Panels and generator above, battery beside the inverter, and the way down to the panel; or the grid alone. */
function sourcesAt({ sources }: OneLineFacts, middle: number, top: number, busAt: number): Svg[] {
  const upper = top + box.height / 2;
  const lower = upper + box.height + gap;
  const inverter: Spot = [middle, lower];
  const { panels, generator, battery, fuse = [], supply } = sources;
  const apart = 58;
  const parts: Svg[] = [
    wire([
      [middle, lower],
      [middle, busAt],
    ]),
  ];
  if (panels)
    parts.push(
      wire([
        [middle - 12, upper],
        [middle - 12, lower],
      ]),
      boxAt(panels, [middle - apart / 2 - 4, upper]),
    );
  if (generator)
    parts.push(
      wire([
        [middle + 12, upper],
        [middle + 12, lower],
      ]),
      boxAt(generator, [middle + apart / 2 + 4, upper]),
    );
  if (battery)
    parts.push(
      wire([[middle - apart - 8, lower], inverter]),
      boxAt(battery, [middle - apart - 8, lower]),
      ...fuseAt([middle - apart / 2 - 4, lower], fuse),
    );
  return [...parts, boxAt(supply, inverter)];
}

/** The battery's fuse in the wire to the inverter. */
const fuseAt = ([x, y]: Spot, lines: readonly string[]): Svg[] => [
  element('rect', { x: x - 3, y: y - 2, width: 6, height: 4, class: 'break' }),
  ...lines.map((line, i) => element('text', { x, y: y + 6 + i * lineHeight, class: 'box-line' }, words(line))),
];

const panelAt = ({ title, lines }: Place, middle: number, busAt: number): Svg[] => [
  element('line', { x1: middle - 62, y1: busAt, x2: middle + 62, y2: busAt, class: 'bus' }),
  element('text', { x: middle + 3, y: busAt - 2, class: 'caution' }, words(`${title}: ${lines.join(', ')}`)),
];

/** Each circuit down from the panel; the cable between the units across the bottom. */
function branchesAt({ branches, between, handler }: OneLineFacts, middle: number, busAt: number): Svg[] {
  const apart = 47;
  const unitAt = busAt + 14 + wireHeight + 2 * box.height + gap;
  const place = (id: Branch['id']): Spot => [id === 'outdoor' ? middle - apart : middle + apart, unitAt];
  const others = handler ? [boxAt(handler, place('handler'))] : [];
  const [left, right] = [place('outdoor'), place('handler')];
  const below = unitAt + box.height / 2 + 8;
  const link = between
    ? [
        wire([left, [left[0], below], [right[0], below], right], 'wire link'),
        ...beside([middle - 30, below + 4], ['Cable between the units:', ...between]),
      ]
    : [];
  return [...link, ...branches.flatMap((b) => branchAt(b, place(b.id), busAt)), ...others];
}

function branchAt(branch: Branch, [x, unitAt]: Spot, busAt: number): Svg[] {
  const breaker = busAt + 8;
  const disconnect = unitAt - box.height - gap;
  return [
    wire([
      [x, busAt],
      [x, unitAt],
    ]),
    element('rect', { x: x - 2, y: breaker - 3, width: 4, height: 6, class: 'break' }),
    ...beside([x + 1, breaker + 1], [branch.breaker]),
    ...beside([x, breaker + 9], branch.wire),
    boxAt(branch.disconnect, [x, disconnect]),
    boxAt(branch.unit, [x, unitAt]),
  ];
}
