import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { printBars, scaleBar } from '../sheet/bars.ts';
import type { Sheet } from '../sheet/drawing.ts';
import { margin, type Paper } from '../sheet/paper.ts';
import { rowHeight, schedule } from '../sheet/schedule.ts';
import { headHeight, notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, type Svg, words } from '../sheet/svg.ts';
import { cornersTable, shapedRows } from './cornersTable.ts';
import { bothCutLengths, cutLength } from './cutLength.ts';
import { holesTable } from './holesTable.ts';
import { type LaidSheet, laidSheets } from './laidSheets.ts';
import { lyingPiece, type Put } from './lyingPiece.ts';

const style = [
  '.stock{fill:#fff;stroke:#000;stroke-width:.7}.edge{fill:none;stroke:#000;stroke-width:.5}.groove{fill:#ddd}',
  '.fold{stroke:#000;stroke-width:.3;stroke-dasharray:3 .8 .6 .8}.lap{stroke:#000;stroke-width:.25;stroke-dasharray:1.6 1}',
  '.centre{stroke:#000;stroke-width:.15;stroke-dasharray:4 .8 .8 .8}.hole{fill:#fff;stroke:#000;stroke-width:.5}',
  '.rest{fill:none;stroke:#777;stroke-width:.2;stroke-dasharray:.8 .8}.through{stroke:#000;stroke-width:.5}',
  '.mark{font-weight:700;text-anchor:middle;font-size:4.4px}.order{font-weight:700;text-anchor:middle;font-size:2.6px}',
  '.panel{font-size:2.6px;font-style:italic}.blank{fill:#fff;stroke:none}',
].join('');

/** Papers lying on their side, mm, and the scales that a sheet of stock is drawn at, largest first. */
const papers: Readonly<Record<System, Paper>> = {
  us: { name: 'Tabloid, lying', width: 431.8, height: 279.4 },
  si: { name: 'A3, lying', width: 420, height: 297 },
};
const scales: Readonly<Record<System, readonly { readonly ratio: number; readonly words: string }[]>> = {
  us: [
    { ratio: 8, words: '1 1/2 in = 1 ft (1:8)' },
    { ratio: 12, words: '1 in = 1 ft (1:12)' },
    { ratio: 16, words: '3/4 in = 1 ft (1:16)' },
    { ratio: 24, words: '1/2 in = 1 ft (1:24)' },
  ],
  si: [
    { ratio: 10, words: '1:10' },
    { ratio: 15, words: '1:15' },
    { ratio: 20, words: '1:20' },
    { ratio: 50, words: '1:50' },
  ],
};

/** Every sheet of stock as it is cut, one drawing each, true to scale. None until the pieces are laid out. */
export const cutSheetsOf = (plan: Plan, project: Project, units: System): Sheet[] =>
  laidSheets(plan).map((laid, i) => ({
    file: `cut-${i + 1}.svg`,
    title: titleOf(laid),
    svg: cutSheetSvg(laid, project, units),
  }));

const kinds = { board: 'duct board', metal: 'sheet metal', panel: 'plywood' } as const;

export const titleOf = ({ of, number, count, hand }: LaidSheet): string =>
  `Cut sheet: ${kinds[of]}${hand === undefined ? '' : ` at hand, “${hand}”,`} ${number} of ${count}`;

/** One sheet of stock as an SVG sheet to scale: pieces with folds, laps and holes measured from their marked corners, cuts in order, what is left. */
export function cutSheetSvg(laid: LaidSheet, project: Project, units: System): string {
  const { sheet, thickness } = laid;
  const paper = papers[units];
  const notes = notesFor(laid);
  const tables = 26 + notesHeight(notes) + rowHeight * rowsOf(laid, units);
  const field = [paper.width - 2 * margin - 8, paper.height - 2 * margin - headHeight - 8 - tables] as const;
  const least = 1000 * Math.max(sheet.width / field[0], sheet.height / field[1]);
  const scale = scales[units].find((s) => s.ratio >= least) ?? {
    ratio: Math.ceil(least),
    words: `1:${Math.ceil(least)}`,
  };
  const per = 1000 / scale.ratio;
  const [left, top] = [margin + 4, margin + headHeight + 5];
  const foot = top + sheet.height * per;
  const put: Put = ([x, y]) => [left + x * per, foot - y * per];
  const bottom = paper.height - margin - notesHeight(notes) - 1;
  const size = `${bothCutLengths(sheet.width, units)} x ${bothCutLengths(sheet.height, units)}`;
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: `${titleOf(laid)}: ${size}, ${thickSaid(thickness, units)} thick`,
      how: `Scale ${scale.words}. Sheet: ${paper.name}. ${laid.of === 'panel' ? '' : 'Seen from the side that is cut, the inside of the box. '}Every measure of a piece counts from its black corner, never scaled off.`,
    },
    { style, scale: String(scale.ratio) },
    element('rect', { x: left, y: top, width: sheet.width * per, height: sheet.height * per, class: 'stock' }),
    ...sheet.rests.flatMap((r) => restAt(r, put, per, units)),
    ...laid.pieces.map((p) => lyingPiece(p, put, units)),
    ...sheet.cuts.flatMap((c, i) => throughCut(c, i + 1, put)),
    ...tablesAt(laid, foot + 6, units),
    scaleBar(margin + 250, bottom - 6, {
      metres: units === 'us' ? 0.6096 : 0.5,
      ratio: scale.ratio,
      says: units === 'us' ? '2 ft' : '500 mm',
    }),
    printBars(margin + 2, bottom - 10),
    ...notesAt(bottom, notes, 2),
  );
}

/** Thinner than a tape can measure: in hundredths of a millimetre and thousandths of an inch. */
const thickSaid = (metres: number, units: System): string =>
  metres > 0.005
    ? bothCutLengths(metres, units)
    : `${Math.round(metres * 1e5) / 100} mm (${Math.round(metres / 0.0000254) / 1000} in)`;

function restAt(r: LaidSheet['sheet']['rests'][number], put: Put, per: number, units: System): Svg[] {
  const [x, y] = put([r.x, r.y + r.height]);
  const [width, height] = [r.width * per, r.height * per];
  const says =
    r.remnant === undefined ? '' : `keep ${r.remnant}: ${cutLength(r.width, units)} x ${cutLength(r.height, units)}`;
  const narrow = width < 30 && height > width;
  const transform = `translate(${(x + width / 2 + (narrow ? 1 : 0)).toFixed(2)} ${(y + height / 2).toFixed(2)})${narrow ? ' rotate(-90)' : ''}`;
  return [
    element('rect', { x, y, width, height, class: 'rest' }),
    ...(says === '' ? [] : [element('text', { transform, 'text-anchor': 'middle', class: 'small' }, words(says))]),
  ];
}

function throughCut({ from, to }: LaidSheet['sheet']['cuts'][number], order: number, put: Put): Svg[] {
  const [a, b] = [put(from), put(to)];
  const [x, y] = [a[0] + (b[0] - a[0]) * 0.5, a[1] + (b[1] - a[1]) * 0.5];
  return [
    element('line', { x1: a[0], y1: a[1], x2: b[0], y2: b[1], class: 'through' }),
    element('circle', { cx: x, cy: y, r: 2.1, class: 'hollow' }),
    element('text', { x, y: y + 0.95, class: 'order' }, words(String(order))),
  ];
}

/** Rows that the tables under a sheet take, heads counted. */
const rowsOf = ({ pieces, sheet }: LaidSheet, units: System): number =>
  Math.max(pieces.length, Math.ceil(sheet.cuts.length / 2)) +
  pieces.flatMap((p) => p.holes).length +
  3 +
  shapedRows(pieces, units);

function tablesAt({ pieces, sheet }: LaidSheet, y: number, units: System): Svg[] {
  const both = (m: number) => bothCutLengths(m, units);
  const cuts = sheet.cuts.map(({ from, to }, i) => {
    const stands = Math.abs(from[0] - to[0]) < 1e-9;
    return [
      String(i + 1),
      stands ? `upright, ${both(from[0])} from the left` : `level, ${both(from[1])} from the bottom`,
    ];
  });
  const half = Math.ceil(cuts.length / 2);
  const below = y + (2 + Math.max(pieces.length, half)) * rowHeight;
  const holes = pieces.flatMap((p) => p.holes).length;
  const holesHigh = holes === 0 ? 0 : holes + 2;
  const columns = [
    { head: 'Cut', width: 8 },
    { head: 'Right through the part it is in', width: 84 },
  ];
  return [
    schedule(
      margin,
      y,
      [
        { head: 'Piece', width: 10 },
        { head: 'What it is', width: 70 },
        { head: 'Sideways', width: 42 },
        { head: 'Up', width: 38 },
        { head: 'Corner to corner', width: 42 },
      ],
      pieces.map(({ mark, title, lies, piece: { size } }) => [
        mark,
        title,
        both(lies.width),
        both(lies.height),
        both(Math.hypot(size.width, size.height)),
      ]),
    ),
    schedule(margin + 208, y, columns, cuts.slice(0, half)),
    ...holesTable(pieces, below, units),
    ...cornersTable(pieces, below + holesHigh * rowHeight, units),
    ...(cuts.length > 1 ? [schedule(margin + 304, y, columns, cuts.slice(half))] : []),
  ];
}

const safety: Readonly<Record<LaidSheet['of'], string>> = {
  board:
    'Glass fibre: gloves, sleeves, eye protection and a mask. Cut grooves and laps from the inside and never through the facing: it is the hinge and the seal.',
  metal: 'Edges of sheet metal cut: gloves and eye protection. Bend on the lines, the lap last.',
  panel:
    'Saw outdoors or with a mask: fine dust. Support the panel on both sides of the cut, and keep hands out of the saw’s line.',
};
const first = 'Local code, the maker’s fabrication instructions and licensed practice stand above this sheet.';
const legend: Readonly<Record<LaidSheet['of'], readonly string[]>> = {
  board: [
    `${first} Measure the unit’s outlet before the first cut.`,
    'Grey: groove, folds about its dash-dot line. Dashed: lap, half the board is cut away to the edge. Flap: all but the facing is cut away, staple every 2 in and tape over. ⌀ hole; ↔ sideways and ↕ up from the black corner to its middle.',
  ],
  metal: [
    `${first} Measure the unit’s outlet before the first cut.`,
    'Dash-dot: middle of a bend. Dashed: the lap of the seam. ⌀ hole; ↔ sideways and ↕ up from the black corner to its middle.',
  ],
  panel: [`${first} Ends meet on a joist or a stud: measure those before the first cut.`],
};

const notesFor = ({ of, sheet, joints }: LaidSheet): string[] => [
  safety[of],
  ...legend[of],
  ...joints,
  `${Math.round(100 * sheet.used)} % of the sheet becomes pieces. Numbers in circles: the order of the cuts that go right through. Dotted: what is left; keep what is named.`,
];
