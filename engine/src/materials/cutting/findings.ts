import type { Rung } from '../../air/ladder.ts';
import { inch } from '../../physics/exact.ts';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { PlanView } from '../../plan/trade.ts';
import type { MaterialsResult } from '../result.ts';
import { headroomFindings } from './headroom/findings.ts';
import { jointFindings } from './joint/findings.ts';
import { jointLossFindings } from './joint/lossFindings.ts';
import { unitJoints } from './joint/unitJoints.ts';
import { madeFindings } from './made/findings.ts';
import { passing } from './passing.ts';
import type { CutAnswers, FlatBox } from './result.ts';

const told = telling('materials', 'pieces');
const base = { kind: 'count', consequence: 'money', holdPoint: 'cut', source: 'cutting.board' } as const;

/** Pa, and m of a side without reinforcement, that the standard for houses allows board ducts. Source: `cutting.board-limits`. */
const pressureMost = 125;
const sideMost = 36 * inch;

/** What stands against cutting: box by box, the limits of board, what the way in lets pass, and whether fewer sheets could do. */
export function cuttingFindings({ cut }: MaterialsResult, view: PlanView): Found[] {
  if (!cut.ok)
    return cut.because === 'missing'
      ? []
      : [
          ...jointFindings(unitJoints(view.project)),
          told({ ...base, id: 'pieces', limit: { max: 0 } }, () => required(cut)),
        ];
  const { boxes, ducts, joints, made } = cut.value;
  return [
    ...jointFindings(joints),
    ...jointLossFindings(joints, view.trades.air),
    ...boxes.flatMap((b) => [
      wrongIn(b),
      ...passing(b, view.project.routes.passages),
      ...headroomFindings(b, view.project),
      ...nearUnit(b),
    ]),
    ...ducts.flatMap((d) => [...wrongMetal(d), ...nearUnit(d)]),
    ...madeFindings(made),
    ...boardLimits(boxes, view),
    ...sheetsUsed(cut.value),
    ...spliced(cut.value),
  ];
}

const counted = (
  id: string,
  found: number,
  facts: Record<string, number | string>,
  source: string = base.source,
): Found =>
  told({ ...base, id, limit: { max: 0 }, source, facts }, (rec) => {
    rec.step('number', 'table', {}, found, '', source);
    return found;
  });

/** Everything because of which a box cannot be cut as it is entered, with the first of it named. */
function wrongIn({ id, name, flat, unplaced, wayOut, box }: FlatBox): Found {
  const [problem] = flat.problems;
  const hole = problem?.at[0] === 'openings' ? box.openings[Number(problem.at[1])]?.id : undefined;
  return counted(`box:${id}`, flat.problems.length + unplaced.length, {
    name,
    ...(problem ? { code: problem.code, at: String(problem.at[0]) } : {}),
    ...(hole === undefined ? {} : { hole }),
    ...(unplaced[0] ? { unplaced: unplaced.map((u) => `“${u.name}”`).join(', ') } : {}),
    ...(wayOut ? { wayOut } : {}),
    form: flat.form ?? '',
  });
}

/** Why a metal duct cannot be cut as it is entered, where it cannot. */
function wrongMetal({ id, name, problems, unplaced, openings }: CutAnswers['ducts'][number]): Found[] {
  const number = problems.length + unplaced.length;
  if (number === 0) return [];
  const [problem] = problems;
  const hole = problem?.at[0] === 'openings' ? openings[Number(problem.at[1])]?.id : undefined;
  return [
    counted(`metal:${id}`, number, {
      name,
      code: problem?.code ?? '',
      ...(hole === undefined ? {} : { hole }),
      ...(unplaced[0] ? { unplaced: unplaced.map((u) => `“${u.name}”`).join(', ') } : {}),
    }),
  ];
}

/** Holes nearer to the unit than its outlet's clear stretch, where there are any. */
function nearUnit({ id, name, holes }: Pick<FlatBox, 'id' | 'name' | 'holes'>): Found[] {
  const near = holes.filter((h) => h.short);
  if (near.length === 0) return [];
  const found = counted(
    `near-unit:${id}`,
    near.length,
    { name, which: near.map((h) => `“${h.name}”`).join(', ') },
    'cutting.spacing',
  );
  return [{ ...found, draft: { ...found.draft, consequence: 'comfort' } }];
}

function boardLimits(boxes: readonly FlatBox[], { trades: { air } }: PlanView): Found[] {
  if (boxes.length === 0) return [];
  const source = 'cutting.board-limits';
  const [widest] = boxes
    .map(({ name, box }) => ({ name, side: Math.max(box.width, box.height) }))
    .sort((a, b) => b.side - a.side);
  return [
    told(
      { ...base, id: 'board-pressure', kind: 'pressure', consequence: 'damage', limit: { max: pressureMost }, source },
      (rec) => {
        const rungs = required(air?.ladder ?? attempt(() => unresolved('missing', 'routes.ducts')));
        const held = boxes.map(({ side }) => heldIn(side, rungs));
        const { way, filter } = held.reduce((a, b) => (a.way + a.filter >= b.way + b.filter ? a : b));
        rec.step('p', 'way + filter', { way, filter }, way + filter, 'Pa', source);
        return way + filter;
      },
    ),
    told(
      {
        ...base,
        id: 'board-side',
        kind: 'length',
        consequence: 'damage',
        limit: { max: sideMost },
        source,
        facts: { name: widest?.name ?? '' },
      },
      (rec) => {
        const side = widest?.side ?? 0;
        rec.step('side', 'table', {}, side, 'm', source);
        return side;
      },
    ),
  ];
}

/** Pa between a box and the room around it: what its side of the hardest way takes; before the unit the filter as well. */
function heldIn(side: 'supply' | 'return', rungs: readonly Rung[]): { readonly way: number; readonly filter: number } {
  const sum = (of: Rung['side']) => rungs.reduce((a, r) => a + (r.side === of ? r.drop : 0), 0);
  return { way: sum(side), filter: side === 'return' ? sum('unit') : 0 };
}

/** Sheets beyond the number that no plan goes below. */
const sheetsUsed = ({ sheets }: CutAnswers): Found[] =>
  sheets.map(({ of, thickness, plan }) =>
    told(
      {
        ...base,
        id: `sheets:${of}-${Math.round(thickness * 10000)}`,
        limit: { max: 0 },
        source: 'cutting.plan',
        facts: {
          of,
          sheets: plan.cost,
          hand: plan.sheets.length - plan.cost,
          kept: plan.sheets.flatMap((s) => s.rests).filter((r) => r.remnant !== undefined).length,
          proved: plan.proved ? 1 : 0,
        },
      },
      (rec) => {
        if (plan.problems.length > 0) return unresolved('out-of-range', 'routes.ducts.cutting');
        const given = { sheets: plan.cost, bound: plan.bound };
        const gap = given.sheets - given.bound;
        rec.step('gap', 'sheets - bound', given, gap, '', 'cutting.plan');
        return gap;
      },
    ),
  );

/** Flexible runs that are spliced, where there are any, against what one run may have. */
function spliced({ bags, names }: CutAnswers): Found[] {
  const all = bags.flatMap((b) => b.plan.splices);
  const sum = all.reduce((a, s) => a + s.count, 0);
  if (sum === 0) return [];
  const named = (runs: readonly string[]) => runs.map((run) => `“${names[run] ?? run}”`).join(', ');
  const over = bags.flatMap((b) => b.plan.tooMany);
  const facts = { which: named(all.map((s) => s.run)), count: sum, over: named(over) };
  const id = 'spliced';
  return [
    told({ ...base, id, consequence: 'comfort', limit: { max: 0 }, source: 'cutting.splices', facts }, (rec) => {
      rec.step('number', 'table', {}, over.length, '', 'cutting.splices');
      return over.length;
    }),
  ];
}
