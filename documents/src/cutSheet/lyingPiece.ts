import { onSheet } from '@kneewall/engine/physics';
import type { System } from '@kneewall/project';
import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';
import type { CutPiece } from './cut.ts';
import { cutLength } from './cutLength.ts';
import { lineWord } from './cutMeasures.ts';
import { holeSize, type MarkedHole, sideName } from './holesOf.ts';
import type { MarkedPiece } from './laidSheets.ts';
import { isShaped } from './shaped.ts';

/** From the sheet's metres to mm on the paper. */
export type Put = (spot: readonly [number, number]) => readonly [number, number];

type Line = CutPiece['lines'][number];

/** mm of the label along a line, and by which labels of neighbouring lines are staggered. */
const labelLong = 22;

/** A piece where it lies: edges, folds with the width of their grooves, laps, holes with their centres, every line with its measure from the marked corner. */
export function lyingPiece({ mark, piece, holes, lies }: MarkedPiece, put: Put, units: System): Svg {
  const lying = onSheet(piece, lies);
  const lines = lying.lines.map((l, i) => ({ ...l, own: piece.lines[i] ?? l }));
  const per = Math.abs(put([1, 0])[0] - put([0, 0])[0]);
  const shaped = isShaped(piece);
  const about = rectangleOf(piece, lies);
  let staggered = 0;
  return element(
    'g',
    { class: 'piece', 'data-mark': mark },
    element('polygon', { points: pointsOf(lying.outline.map(put)), class: 'edge' }),
    ...lines.filter((l) => l.kind !== 'centre').flatMap((l) => lineAt(l, put, per)),
    ...lying.holes.map((h) => holeAt(h, put, per)),
    ...lines.filter((l) => l.kind === 'centre').map((l) => ruled(put(l.from), put(l.to), 'centre')),
    ...(shaped
      ? cornerNumbers(lying.outline.map(put))
      : lines.filter((l) => l.kind !== 'centre').map((l) => labelOf(l, l.own, piece, put, units, staggered++))),
    ...holes.flatMap((h, i) => holeLabel(h, lying.holes[i]?.centre ?? [0, 0], put, units)),
    ...piece.panels
      .filter((p) => !shaped && p.name !== 'cap' && p.name !== 'lap')
      .map((p) => panelName(p, piece, lies, put)),
    corner(about.map(put)),
    markAt(mark, lying.outline.map(put), shaped),
  );
}

const ruled = (a: readonly [number, number], b: readonly [number, number], kind: string): Svg =>
  element('line', { x1: a[0], y1: a[1], x2: b[0], y2: b[1], class: kind });

function lineAt(l: Line, put: Put, per: number): Svg[] {
  const [a, b] = [put(l.from), put(l.to)];
  const half = ((l.width ?? 0) * per) / 2;
  const stands = Math.abs(a[0] - b[0]) < 1e-6;
  const band =
    half > 0
      ? [
          element('rect', {
            x: Math.min(a[0], b[0]) - (stands ? half : 0),
            y: Math.min(a[1], b[1]) - (stands ? 0 : half),
            width: Math.abs(a[0] - b[0]) + (stands ? 2 * half : 0),
            height: Math.abs(a[1] - b[1]) + (stands ? 0 : 2 * half),
            class: 'groove',
          }),
        ]
      : [];
  return [...band, ruled(a, b, l.kind === 'lap' ? 'lap' : 'fold')];
}

/** The measure of a line, written along it; neighbours at different places, so that they do not run into each other. */
function labelOf(l: Line, own: Line, piece: CutPiece, put: Put, units: System, nth: number): Svg {
  const [a, b] = [put(l.from), put(l.to)];
  const at = own.from[0] === own.to[0] ? own.from[0] : own.from[1];
  const says = `${lineWord(piece, own)} ${cutLength(at, units)}`;
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const room = Math.max(1, Math.floor((long - 6) / labelLong));
  const along = Math.min(long - 2, 3 + (nth % Math.min(4, room)) * labelLong);
  const stands = Math.abs(a[0] - b[0]) < 1e-6;
  // Level labels keep out of the corner, where those of upright lines begin.
  const [x, y] = stands ? [a[0] - 0.6, Math.max(a[1], b[1]) - along] : [Math.min(a[0], b[0]) + along + 4, a[1] - 0.6];
  const transform = `translate(${x.toFixed(2)} ${y.toFixed(2)})${stands ? ' rotate(-90)' : ''}`;
  return element('g', { transform }, ...lettering(0, 0, says));
}

/** Height of small letters and the middle width of one, mm. */
const small = { high: 2.5, wide: 1.1 } as const;

/** Letters on white, so that lines below them do not cross them out: printing libraries know no letters with a rim. */
const lettering = (x: number, y: number, says: string): Svg[] => [
  element('rect', {
    ...{ x: x - 0.3, y: y - 0.85 * small.high, width: small.wide * says.length + 0.6, height: 1.1 * small.high },
    class: 'blank',
  }),
  element('text', { x, y, class: 'small' }, words(says)),
];

type Hole = CutPiece['holes'][number];

function holeAt({ centre, shape }: Hole, put: Put, per: number): Svg {
  const [cx, cy] = put(centre);
  if (shape.kind === 'round') return element('circle', { cx, cy, r: (shape.diameter * per) / 2, class: 'hole' });
  const [width, height] = [shape.width * per, shape.height * per];
  return element('rect', { x: cx - width / 2, y: cy - height / 2, width, height, class: 'hole' });
}

/** Size of a hole, and its middle from the marked corner. */
function holeLabel(
  { sideways, up, shape }: MarkedHole,
  centre: readonly [number, number],
  put: Put,
  units: System,
): Svg[] {
  const [x, y] = put(centre);
  return [holeSize(shape, units), `↔ ${cutLength(sideways, units)}`, `↕ ${cutLength(up, units)}`].flatMap((says, i) =>
    lettering(x + 1, y + (i === 0 ? -1 : 3.2 * i - 0.4), says),
  );
}

/** Which side of the box a panel becomes, at its foot. */
function panelName(panel: CutPiece['panels'][number], piece: CutPiece, lies: MarkedPiece['lies'], put: Put): Svg {
  const middle = [(panel.inside.from[0] + panel.inside.to[0]) / 2, 0.06 * piece.size.height + 0.02] as const;
  const at = onSheet({ ...piece, lines: [], outline: [middle], holes: [] }, lies).outline[0] ?? [0, 0];
  const [x, y] = put(at);
  return element('text', { x, y, 'text-anchor': 'middle', class: 'panel' }, words(sideName(panel.name)));
}

/** The rectangle about a piece as it lies, its marked corner first. */
const rectangleOf = (piece: CutPiece, lies: MarkedPiece['lies']): readonly (readonly [number, number])[] => {
  const { width, height } = piece.size;
  const outline = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return onSheet({ ...piece, outline, lines: [], holes: [] }, lies).outline;
};

/** Corners numbered as the list has them, a little inside. */
function cornerNumbers(outline: readonly (readonly [number, number])[]): Svg[] {
  const n = outline.length;
  if (n > cornersNumbered) return [];
  const [mx, my] = [outline.reduce((a, p) => a + p[0], 0) / n, outline.reduce((a, p) => a + p[1], 0) / n];
  return outline.flatMap(([x, y], i) => {
    const long = Math.hypot(mx - x, my - y) || 1;
    return lettering(x + (3.4 * (mx - x)) / long - 0.6, y + (3.4 * (my - y)) / long + 0.9, String(i + 1));
  });
}

/** More corners than these, as of a round end, stand in the list alone. */
const cornersNumbered = 14;

/** The corner from which a piece is measured: the first of its rectangle. */
function corner(outline: readonly (readonly [number, number])[]): Svg {
  const [at, right, , up] = outline;
  if (!at || !right || !up) return { svg: '' };
  const towards = (to: readonly [number, number]): readonly [number, number] => {
    const long = Math.hypot(to[0] - at[0], to[1] - at[1]) || 1;
    return [at[0] + ((to[0] - at[0]) / long) * 4, at[1] + ((to[1] - at[1]) / long) * 4];
  };
  return element('polygon', { points: pointsOf([at, towards(right), towards(up)]), class: 'full' });
}

/** The letter of a piece: at its upper right, in the middle of a shaped one. */
function markAt(mark: string, outline: readonly (readonly [number, number])[], shaped: boolean): Svg {
  const [xs, ys] = [outline.map((p) => p[0]), outline.map((p) => p[1])];
  const middle = (all: readonly number[]): number => all.reduce((a, v) => a + v, 0) / all.length;
  const [x, y] = shaped ? [middle(xs), middle(ys)] : [Math.max(...xs) - 6, Math.min(...ys) + 6.5];
  return element(
    'g',
    {},
    element('circle', { cx: x, cy: y, r: 3.6, class: 'hollow' }),
    element('text', { x, y: y + 1.6, class: 'mark' }, words(mark)),
  );
}
