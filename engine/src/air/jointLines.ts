import type { QuantityKind } from '@kneewall/project';
import { inch } from '../physics/exact.ts';
import type { MaterialLine } from '../plan/lines.ts';
import type { AirModel, DuctSection } from './ductwork.ts';
import { sideOf } from './model.ts';
import { shapeOf } from './sizing/reshape.ts';
import { shapeId } from './sizing/stock.ts';
import type { There } from './there.ts';

/** m from joint to joint in metal and board, and from hanger to hanger in metal. Common practice. */
const pieceLength = 1.2;
const metalHangers = 2.4;
/** Joints that a tub of mastic (a gallon) covers, and m² of board for a plenum or return box. Common practice. */
const jointsOfTub = 12;
const boxBoard = 1.5;
/** m round the thinnest duct. */
const roundLeast = 0.1;

const isMetal = (x: DuctSection): boolean => x.kind === 'round' || x.kind === 'rectangular';

/** Joints of a run: two ends, and in metal and board one at every piece. */
const jointsOf = (x: DuctSection): number => (x.kind === 'flexible' ? 2 : 1 + Math.ceil(x.length / pieceLength));

/** Registers that are to be bought. */
export const newTerminals = ({ terminals }: AirModel, there: There): AirModel['terminals'] =>
  terminals.filter((t) => !there.terminals.includes(t.id));

/**
 * Collars by size, boxes, hangers by their spacing, tape and mastic by joint: what is needed, before waste and rounding.
 * Of ducts that are there already only the joints that are to be sealed count.
 */
export function jointLines(model: AirModel, there: There): MaterialLine[] {
  const fresh = model.sections.filter((x) => !(x.id in there.sections));
  const sealed = model.sections.filter((x) => there.sections[x.id] !== 'kept');
  const ids = (sections: readonly DuctSection[]) => new Set(sections.map((x) => x.id));
  const [made, tight] = [ids(fresh), ids(sealed)];
  const flexible = fresh.filter((x) => x.kind === 'flexible');
  const returns = model.terminals.filter((t) => made.has(t.section) && sideOf(model, t.section) === 'return').length;
  const joints = (of: (x: DuctSection) => number): number => sealed.reduce((a, x) => a + of(x), 0);
  const all = joints(jointsOf) + model.terminals.filter((t) => tight.has(t.section)).length;
  // Hangers of a run that stays hang already, unless they are said to be missing.
  const hung = model.sections.filter((x) => made.has(x.id) || there.unhung.includes(x.id));
  const inMetal = hung.reduce((a, x) => a + (isMetal(x) ? Math.ceil(x.length / metalHangers) : 0), 0);
  // A box at the unit where anything new is to leave it.
  const supplied = model.sections.length === 0 || fresh.some((x) => x.side === 'supply') ? 1 : 0;
  const boxes = supplied + returns - fresh.filter((x) => x.kind === 'board').length;
  const hangers = hung.reduce((a, x) => a + (x.kind === 'flexible' ? Math.ceil(x.length / x.supports) : 0), 0);
  return [
    ...flexible.map((x) => collars(x, atBoot(model, x) ? 1 : 2)),
    ...bands(model, flexible),
    ...(boxes > 0 ? [boxBoards(boxes)] : []),
    count('hangers', 'Saddle hangers, at least 1 1/2 in wide', hangers),
    ...(inMetal > 0 ? [count('metal-hangers', 'Strap hangers for metal duct, one every 8 ft', inMetal)] : []),
    ...wrap(fresh),
    count('mastic', 'Tubs of mastic, a gallon for a dozen joints', all / jointsOfTub),
    line(
      'tape',
      'Listed foil tape, once round each joint',
      'length',
      joints((x) => jointsOf(x) * Math.max(x.length > 0 ? x.surface / x.length : 0, roundLeast)),
    ),
    count('test-ports', 'Plugs for two pressure test ports', 2),
  ];
}

/** Whether the run ends at a register's boot, which has a collar of its own. */
const atBoot = (model: AirModel, x: DuctSection): boolean =>
  x.side === 'supply' && model.terminals.some((t) => t.section === x.id);

/** The ends of a flexible run that are at no boot, each with the strap of its inner core. */
function collars(x: DuctSection, ends: number): MaterialLine {
  const size = Math.round(x.diameter * 1000);
  return {
    ...count(`collars:${x.id}`, `Collars with inner-core straps for “${x.name}”`, ends),
    for: `routes.ducts.sections.${x.id}`,
    like: {
      id: `end ${shapeId(shapeOf(x))}`,
      what: `Collars with inner-core straps, ${Math.round(size / 2.54) / 10} in (${size} mm)`,
    },
  };
}

/** Round the jacket at both ends of each run, and round the inner core where no collar brought its strap. */
function bands(model: AirModel, flexible: readonly DuctSection[]): MaterialLine[] {
  const boots = flexible.filter((x) => atBoot(model, x)).length;
  const amount = 2 * flexible.length + boots;
  return amount > 0
    ? [
        {
          ...count(
            'bands',
            'Clamp bands for flexible duct: round each jacket end, and round the inner core at each boot',
            amount,
          ),
          // Splices take more of the same: see `materials`.
          like: { id: 'bands', what: 'Clamp bands for flexible duct, for its jackets and inner cores' },
        },
      ]
    : [];
}

/** m of wrap beyond the inner perimeter: what two inches of thickness and the lap take. Common practice, no source. */
const wrapBeyond = 12 * inch;

/** Insulation round new metal duct that has some entered and lies outside the rooms. */
function wrap(fresh: readonly DuctSection[]): MaterialLine[] {
  const area = fresh.reduce(
    (a, x) => a + (isMetal(x) && x.insulation > 0 && x.place !== 'inside' ? x.surface + wrapBeyond * x.length : 0),
    0,
  );
  return area > 0
    ? [line('wrap', 'Insulation with a vapour-tight jacket to wrap metal duct, as thick as entered', 'area', area)]
    : [];
}

/** Boxes at the unit that are not drawn as ducts of board. */
const boxBoards = (boxes: number): MaterialLine => ({
  ...line(
    'box-board',
    'Duct board for boxes at the unit that are not drawn: supply plenum, returns',
    'area',
    boxBoard * boxes,
  ),
  like: { id: 'board', what: 'Duct board, roughly by area' },
});

const line = (id: string, what: string, kind: QuantityKind, amount: number): MaterialLine => ({
  id: `air/${id}`,
  trade: 'air',
  what,
  kind,
  amount,
});

const count = (id: string, what: string, amount: number): MaterialLine => ({
  ...line(id, what, 'count', amount),
  soldBy: 1,
});
