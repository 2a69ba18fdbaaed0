import type { Plan } from '@kneewall/engine';
import { type Project, printQuantity, type System } from '@kneewall/project';
import { printBars } from '../sheet/bars.ts';
import { margin, paperFor } from '../sheet/paper.ts';
import { scaleFor } from '../sheet/scale.ts';
import { rowHeight, schedule } from '../sheet/schedule.ts';
import { headHeight, notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, pointsOf, type Svg, words } from '../sheet/svg.ts';
import { across, upright } from './dimensions.ts';
import { both, type ElevationFacts, elevationFacts } from './elevationFacts.ts';
import { letterOf, regionFills, regions } from './reachRegions.ts';

const style = [
  '.wall{fill:none;stroke:#000;stroke-width:.6}.earth{fill:none;stroke:#000;stroke-width:.25;stroke-dasharray:2 1}',
  '.hatch{fill:none;stroke:#555;stroke-width:.18}.thing{fill:#fff;stroke:#000;stroke-width:.4}.plate{fill:#fff}',
  '.unit{fill:none;stroke:#000;stroke-width:.9}.way{fill:none;stroke:#000;stroke-width:.7;stroke-linejoin:round}',
  '.snow{stroke:#000;stroke-width:.4;stroke-dasharray:3 1.2}.ground{stroke:#000;stroke-width:1.1}',
  '.measure{stroke:#000;stroke-width:.2}.out{fill:#fff;stroke:#000;stroke-width:.6}.mark{font-weight:700;text-anchor:middle}',
].join('');
/** mm left of the wall for upright measures, under the drawing for level ones, and for the bars. */
const aside = 20;
const under = 17;
/** mm right of it for the snow. */
const beside = 36;
const barsHigh = 16;

/**
 * The wall of the outdoor unit from outside, the ground before it folded down, as one SVG sheet to scale: what is on it,
 * what each line set reaches, the unit with its measures from a corner in both unit systems. Undefined where no wall can be
 * laid out. Equal plans give equal bytes.
 */
export function elevationSvg(plan: Plan, project: Project, units: System): string | undefined {
  const facts = elevationFacts(plan, project);
  if (!facts) return undefined;
  const { wall } = facts;
  const [notes, rows, lines] = [notesOf(project), rowsOf(facts, units), linesOf(facts, units)];
  const tall = wall.height + wall.ground.depth;
  const others = headHeight + under + barsHigh + notesHeight(notes) + (rows.length + lines.length + 2) * rowHeight + 6;
  const paper = paperFor(units, others, 90);
  const field = [paper.width - 2 * margin - aside - beside, paper.height - 2 * margin - others] as const;
  const scale = scaleFor(units, [wall.width, tall], field);
  const per = 1000 / scale.ratio;
  const left = margin + aside;
  const foot = margin + headHeight + 3 + wall.height * per;
  const x = (m: number): number => left + m * per;
  const y = (m: number): number => foot - m * per;
  const end = y(-wall.ground.depth) + under;
  const bottom = paper.height - margin - notesHeight(notes) - 2;
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: `${wall.name} from outside${wall.ground.depth > 0 ? ', the ground before it folded down' : ''}: the outdoor unit and its line`,
      how: `Scale ${scale.words}. Sheet: ${paper.name}. Measured from the wall’s left end and from the ground.`,
    },
    { style, scale: String(scale.ratio) },
    regionFills(),
    ...wallAt(facts, x, y, units),
    ...unitAt(facts, x, y, units),
    schedule(margin, end, columns, rows),
    ...lines.map((line, i) =>
      element('text', { x: margin + 0.6, y: end + (rows.length + 2 + i) * rowHeight }, words(line)),
    ),
    printBars(margin + 2, bottom - barsHigh + 5),
    ...notesAt(bottom, notes, 3),
  );
}

type Put = (m: number) => number;

const boxAt = (x: Put, y: Put, b: { x: number; z: number; width: number; height: number }, kind: string): Svg =>
  element('rect', {
    x: x(b.x),
    y: y(b.z + b.height),
    width: x(b.width) - x(0),
    height: y(0) - y(b.height),
    class: kind,
  });

function wallAt(facts: ElevationFacts, x: Put, y: Put, units: System): Svg[] {
  const { wall, things, asked } = facts;
  const { baseLeast } = asked.unit;
  const snow = printQuantity(baseLeast, 'length', units);
  return [
    ...regions(facts, x, y),
    boxAt(x, y, { x: 0, z: 0, width: wall.width, height: wall.height }, 'wall'),
    ...(wall.ground.depth > 0
      ? [boxAt(x, y, { x: 0, z: -wall.ground.depth, width: wall.width, height: wall.ground.depth }, 'earth')]
      : []),
    element('line', { x1: x(0), y1: y(baseLeast), x2: x(wall.width), y2: y(baseLeast), class: 'snow' }),
    element('text', { x: x(wall.width) + 2, y: y(baseLeast) + 0.8, class: 'small' }, words(`snow: base above ${snow}`)),
    ...letters(facts, x, y),
    ...things.flatMap((t, i) => [
      boxAt(x, y, t, 'thing'),
      element('text', { x: x(t.x + t.width / 2), y: y(t.z + t.height / 2) + 0.9, class: 'mark' }, words(String(i + 1))),
    ]),
    element('line', { x1: x(0) - 3, y1: y(0), x2: x(wall.width) + 3, y2: y(0), class: 'ground' }),
  ];
}

/** Each region's letter, in the middle of its middle row. */
const letters = ({ maps, asked }: ElevationFacts, x: Put, y: Put): Svg[] =>
  maps.flatMap(({ rows, cell, stands }) =>
    asked.stock.flatMap((_, k) => {
      const runs = rows.flatMap((row, r) => row.filter((run) => run.stock === k).map((run) => ({ ...run, r })));
      const run = runs[runs.length >> 1];
      if (!run) return [];
      const at = [x(((run.from + run.to) / 2) * cell), y((stands === 'wall' ? 1 : -1) * (run.r + 0.5) * cell)] as const;
      return [
        element('circle', { cx: at[0], cy: at[1], r: 1.7, class: 'plate' }),
        element('text', { x: at[0], y: at[1] + 0.9, class: 'mark' }, words(letterOf(k))),
      ];
    }),
  );

/** Unit, line and hole, and the measures that set them out. */
function unitAt({ wall, asked, place, spot }: ElevationFacts, x: Put, y: Put, units: System): Svg[] {
  const { out } = wall;
  const below = y(-wall.ground.depth);
  const hole = [
    element('circle', { cx: x(out.x), cy: y(out.z), r: 1.3, class: 'out' }),
    across({ from: x(0), to: x(out.x), at: below + 12, says: `hole ${both(out.x, units)}` }),
    upright({ from: y(0), to: y(out.z), at: x(0) - 11, says: `hole ${both(out.z, units)}` }),
  ];
  if (!place) return hole;
  const { width, height, depth } = asked.unit;
  const hung = place.stands === 'wall';
  const box = hung
    ? { x: place.x, z: place.z, width, height }
    : { x: place.x, z: -place.out - depth, width, height: depth };
  return [
    ...(spot && spot.way.length > 1
      ? [element('polyline', { points: pointsOf(spot.way.map(([a, b]) => [x(a), y(b)])), class: 'way' })]
      : []),
    boxAt(x, y, box, 'unit'),
    ...hole,
    across({ from: x(0), to: x(place.x), at: below + 4, says: `unit ${both(place.x, units)}` }),
    upright({
      from: y(0),
      to: y(hung ? place.z : -place.out),
      at: x(0) - 4,
      says: hung ? `base ${both(place.z, units)}` : `back ${both(place.out, units)}`,
    }),
  ];
}

const columns = [
  { head: 'On the drawing', width: 78 },
  { head: 'From the left', width: 34 },
  { head: 'Up, or out', width: 34 },
  { head: 'Wide', width: 20 },
  { head: 'High, or deep', width: 20 },
] as const;

function rowsOf({ asked, things, place }: ElevationFacts, units: System): string[][] {
  const length = (m: number): string => printQuantity(m, 'length', units);
  const { width, height, depth } = asked.unit;
  return [
    ...things.map((t, i) => [
      `${i + 1}: ${t.name}`,
      length(t.x),
      length(t.ground ? -t.z - t.height : t.z),
      length(t.width),
      length(t.height),
    ]),
    ...(place
      ? [
          [
            place.stands === 'wall' ? 'The outdoor unit, hung' : `The outdoor unit, base ${length(place.z)} up`,
            length(place.x),
            length(place.stands === 'wall' ? place.z : place.out),
            length(width),
            length(place.stands === 'wall' ? height : depth),
          ],
        ]
      : []),
  ];
}

/** What takes a line of its own: the set, who hears it, and what each letter reaches. */
function linesOf({ asked, place, spot, set, maps }: ElevationFacts, units: System): string[] {
  const length = (m: number): string => printQuantity(m, 'length', units);
  const heard = [
    ['bedroom window', spot?.bedroom],
    ['neighbour’s window', spot?.neighbour],
    ['property line', spot?.line],
  ].flatMap(([where, dB]) => (typeof dB === 'number' ? [`${where} ${printQuantity(dB, 'sound-level', units)}`] : []));
  return [
    ...(set && place
      ? [`The ${length(set.length)} set ${set.spare >= 0 ? `leaves ${length(set.spare)}` : 'is too short'}.`]
      : []),
    ...(heard.length > 0 ? [`Heard when it is loudest: ${heard.join(', ')}.`] : []),
    ...asked.stock.flatMap((s, k) =>
      maps.some((m) => m.rows.some((row) => row.some((r) => r.stock === k)))
        ? [`${letterOf(k)}: where the unit’s corner may lie with the ${length(s.length)} set.`]
        : [],
    ),
  ];
}

const notesOf = (project: Project): string[] => [
  'For planning and buying, not an approval. The maker’s instructions, the local code and licensed practice stand above this sheet.',
  'Anchors by the maker or a structural engineer. Nobody stands under the unit while it is lifted. Wires and pipes behind before drilling.',
  'Refrigerant stands under pressure, freezes skin and may burn: couplings, valves and charge are licensed work in most places.',
  'A set filled at the factory is not cut: spare line lies as one flat loop, never as a tight upright coil.',
  ...(project.about?.invented
    ? ['All data on this sheet are invented: no place, product or price in it is real.']
    : []),
];
