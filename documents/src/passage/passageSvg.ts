import { type Plan, verdictOf } from '@kneewall/engine';
import { type Project, printQuantity, type System } from '@kneewall/project';
import { cutOff } from '../sheet/cutOff.ts';
import { margin, type Paper, paperFor } from '../sheet/paper.ts';
import { scaleFor } from '../sheet/scale.ts';
import { notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';

type Ways = Extract<NonNullable<Plan['trades']['access']>['ways'], { ok: true }>['value'];
type Way = Ways[number];
type Stage = Extract<Way['planned'], { ok: true }>['value']['stages'][number];

const style = [
  '.wall{fill:#ddd;stroke:#000;stroke-width:.3}.ghost{fill:none;stroke:#000;stroke-width:.2}',
  '.tight{fill:none;stroke:#000;stroke-width:.7}.way{fill:none;stroke:#000;stroke-width:.2;stroke-dasharray:.6 1}',
].join('');
const pieceWords: Readonly<Record<Way['piece'], string>> = {
  handler: 'air handler',
  handlerCrated: 'air handler in its crate',
  handlerPart: 'largest part of the air handler',
  outdoorUnit: 'outdoor unit',
};
const viewWords: Readonly<Record<Stage['view'], string>> = {
  hatch: 'from the side',
  flight: 'up the flight, from the side',
  plan: 'from above',
};

/** The planned way of the chosen unit's bare boxes that has least to spare; none before it is planned. */
function tightestWay(plan: Plan): { readonly way: Way; readonly stage: Stage } | undefined {
  const access = plan.trades.access;
  if (!access?.ways.ok || !access.chosen.ok) return undefined;
  const { value: chosen } = access.chosen;
  const [way] = access.ways.value
    .filter(
      (w) => w.candidate === chosen && w.piece !== 'handlerCrated' && w.planned.ok && w.planned.value.stages.length > 0,
    )
    .sort((x, y) => (verdictOf(x).spare ?? 1) - (verdictOf(y).spare ?? 1));
  const stage = way?.planned.ok ? way.planned.value.stages[0] : undefined;
  return way && stage ? { way, stage } : undefined;
}

/**
 * The tightest way in of the chosen unit as one SVG sheet, to scale: framing, walls and roof, the piece along its path and
 * where it has least room. Undefined where no passage is planned. Equal plans give equal bytes.
 */
export function passageSvg(plan: Plan, project: Project, units: System): string | undefined {
  const found = tightestWay(plan);
  if (!found) return undefined;
  const { way, stage } = found;
  const notes = notesOf(way, stage, project, units);
  const paper = paperFor(units, 0, 200);
  const [x0, y0, x1, y1] = boxOf(stage);
  const field = [paper.width - 2 * margin, paper.height - 2 * margin - 24 - notesHeight(notes)] as const;
  const scale = scaleFor(units, [x1 - x0, y1 - y0], field);
  const { verdict } = verdictOf(way);
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: `${way.name}: the ${pieceWords[way.piece]} ${verdict === 'no' ? 'where it stops' : 'on its way'}, ${viewWords[stage.view]}`,
      how: `Scale ${scale.words}. Sheet: ${paper.name}. Bold: where it has least room. Dotted: the way of its middle.`,
    },
    { style, scale: String(scale.ratio) },
    ...drawing(stage, 1000 / scale.ratio, paper, field),
    ...notesAt(paper.height - margin - notesHeight(notes) - 2, notes, 2),
  );
}

/** m that the path and the piece on it take up. */
function boxOf({ path, piece }: Stage): readonly [number, number, number, number] {
  const reach = Math.hypot(...piece) / 2 + 0.05;
  const of = (k: number) => path.filter((_, i) => i % 3 === k);
  return [
    Math.min(...of(0)) - reach,
    Math.min(...of(1)) - reach,
    Math.max(...of(0)) + reach,
    Math.max(...of(1)) + reach,
  ];
}

function drawing(stage: Stage, mm: number, paper: Paper, field: readonly [number, number]): Svg[] {
  const [x0, , , y1] = boxOf(stage);
  const [left, top] = [margin, margin + 20];
  const spot = ([x, y]: readonly [number, number]): readonly [number, number] => [
    left + (x - x0) * mm,
    top + (y1 - y) * mm,
  ];
  const outlined = ([x, y, turn]: readonly number[], kind: string): Svg =>
    element('polygon', {
      points: pointsOf(cornersOf(stage.piece, [x ?? 0, y ?? 0, turn ?? 0]).map(spot)),
      class: kind,
    });
  const poses = Array.from({ length: stage.path.length / 3 }, (_, i) => stage.path.slice(3 * i, 3 * i + 3));
  const within = [left, top, paper.width - margin, top + field[1]] as const;
  return [
    ...stage.outlines
      .map((o) => cutOff(o.map(spot), within))
      .filter((o) => o.length > 0)
      .map((o) => element('polygon', { points: pointsOf(o), class: 'wall' })),
    element('polyline', { points: pointsOf(poses.map(([x = 0, y = 0]) => spot([x, y]))), class: 'way' }),
    ...poses.map((pose) => outlined(pose, 'ghost')),
    outlined(stage.tightest, 'tight'),
    ...(stage.view === 'hatch' ? levelNames(hatchLevels(stage), spot, paper.width - margin - 2) : []),
  ];
}

/** m of a hatch from the side: its opening's edges, the underside of the ceiling it goes through, the floor below. */
type HatchLevels = { readonly left: number; readonly right: number; readonly under: number; readonly floor: number };

/** Read off the framing left and right of the opening and the floor below, which stand first among what is in the way. */
function hatchLevels({ outlines }: Stage): HatchLevels {
  const of = (outline: number, pick: (...values: number[]) => number, axis: 0 | 1): number =>
    pick(...(outlines[outline] ?? []).map((corner) => corner[axis]));
  return { left: of(0, Math.max, 0), right: of(1, Math.min, 0), under: of(0, Math.min, 1), floor: of(2, Math.max, 1) };
}

/** What lies above and below, at the sheet's right edge where the piece never comes. */
const levelNames = (
  { under, floor }: HatchLevels,
  spot: (at: readonly [number, number]) => readonly [number, number],
  x: number,
): Svg[] =>
  [
    { up: 0, below: -1.5, says: 'attic' },
    { up: under / 2, below: 0.9, says: 'ceiling and its framing' },
    { up: under, below: 4, says: 'room below' },
    { up: floor, below: 4, says: 'floor' },
  ].map(({ up, below, says }) =>
    element('text', { x, y: spot([0, up])[1] + below, 'text-anchor': 'end' }, words(says)),
  );

function cornersOf(
  [long, wide]: readonly [number, number],
  [x, y, turn]: readonly [number, number, number],
): (readonly [number, number])[] {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ].map(([u = 0, v = 0]) => {
    const [a, b] = [(u * long) / 2, (v * wide) / 2];
    return [x + a * c - b * s, y + a * s + b * c] as const;
  });
}

const hatchSaid = ({ left, right, under, floor }: HatchLevels, length: (m: number) => string): string =>
  `Drawn: an opening of ${length(right - left)} through ${length(-under)} of ceiling and framing, ${length(under - floor)} above the floor. Measure all three.`;

function notesOf(way: Way, stage: Stage, project: Project, units: System): string[] {
  const length = (m: number): string => printQuantity(m, 'length', units);
  const { verdict, spare } = verdictOf(way);
  const gap = stage.tightest[4];
  const third = (['width', 'depth', 'height'] as const).find((s) => !stage.sides.includes(s)) ?? 'depth';
  return [
    'Nobody under the load. The opening is a hole in the floor: guard it from above and below. Nobody carries a unit up a ladder.',
    'No joist, truss or rafter is cut without a structural engineer. Local code and the maker’s instructions stand above this sheet.',
    `${verdict === 'no' ? 'It does not pass' : 'It passes'}${spare === undefined ? '' : `: ${length(Math.abs(spare))} ${spare < 0 ? 'lacking' : 'to spare'} in all`}. Least room on the way drawn: ${length(gap)}.`,
    ...(stage.view === 'hatch' ? [hatchSaid(hatchLevels(stage), length)] : []),
    `Its ${stage.sides[0]} and ${stage.sides[1]} are in the plane of the sheet, its ${third} across it. Twisting out of the plane is not looked at.`,
    ...(project.about?.invented
      ? ['All data on this sheet are invented: no place, product or price in it is real.']
      : []),
  ];
}
