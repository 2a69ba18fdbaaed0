import { inOrder, type ResolvedProject } from '@kneewall/project';
import { flexibleNeeded } from '../../physics/cutting/index.ts';
import { inch } from '../../physics/exact.ts';
import { scenario } from '../../plan/scenario.ts';
import { ductAtHand, sheetsAtHand } from './atHand.ts';
import { boxesOf } from './boxesOf.ts';
import { boardShared, metalShared } from './joint/sharedBoxes.ts';
import { unitJoints } from './joint/unitJoints.ts';
import { madeOf } from './made/madeOf.ts';
import { ductsOf } from './metalDuctsOf.ts';
import type { CutInputs, CutRun } from './result.ts';
import { fittedSections, sizeOf } from './sectionsOf.ts';

/** m that a crimped end goes into the next length. Source: `cutting.ends` (common practice). */
const crimp = 1.5 * inch;

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'work' | 'candidates'>;

/** All that ducts are cut from and into, as the document has it; what is fitted already is left out. Lengths m. Never throws. */
export function inputsOf(project: Project): CutInputs {
  const { cutting } = project.routes.ducts;
  const { board, metal, straight } = cutting;
  const s = scenario();
  return {
    boxes: [...boxesOf(project), ...boardShared(project)],
    ducts: [...ductsOf(project), ...metalShared(project)],
    joints: unitJoints(project),
    made: madeOf(project),
    board: {
      width: s.of(board.width),
      length: s.of(board.length),
      turns: s.choice(board.turns) === 'yes',
      kerf: s.of(board.kerf),
      keep: s.of(board.keep),
      form: s.choice(board.form),
      atHand: sheetsAtHand(project, 'board', { width: s.of(board.width), length: s.of(board.length) }),
    },
    metal: {
      thickness: s.of(metal.thickness),
      width: s.of(metal.width),
      length: s.of(metal.length),
      lap: s.of(metal.lap),
      kerf: s.of(metal.kerf),
      atHand: sheetsAtHand(project, 'metal', { width: s.of(metal.width), length: s.of(metal.length) }),
    },
    pipes: byDiameter(runsOf(project, 'round')).map(({ diameter, runs }) => {
      const stock = s.of(straight.pipe);
      return { diameter, stock, runs, atHand: ductAtHand(project, 'round', diameter, stock) };
    }),
    bags: byDiameter(runsOf(project, 'flexible')).map(({ diameter, runs }) => {
      const coil = coilSold(project, diameter, runs) ?? s.of(straight.coil);
      return { diameter, coil, runs, atHand: ductAtHand(project, 'flexible', diameter, coil) };
    }),
    sleeve: s.of(straight.sleeve),
    splices: s.choice(straight.splices),
    splicesMost: s.of(straight.splicesMost),
  };
}

type Run = CutRun & { readonly diameter: number };

function runsOf(project: Project, kind: 'round' | 'flexible'): Run[] {
  const s = scenario();
  const there = fittedSections(project);
  return inOrder(project.routes.ducts.sections).flatMap(([id, x]) => {
    const [shape, length] = [sizeOf(x, s), s.maybe(x.length)];
    if (!('choice' in x.kind) || x.kind.choice !== kind || there.has(id)) return [];
    if (!shape || !('diameter' in shape) || length === undefined || length <= 0) return [];
    const cut = kind === 'flexible' ? flexibleNeeded(length, s.of(x.compression)) : length;
    return [{ id, name: x.name ?? id, length: cut, diameter: shape.diameter }];
  });
}

function byDiameter(runs: readonly Run[]): { readonly diameter: number; readonly runs: readonly CutRun[] }[] {
  const groups = new Map<number, Run[]>();
  for (const run of runs) {
    const mm = Math.round(run.diameter * 1000);
    groups.set(mm, [...(groups.get(mm) ?? []), run]);
  }
  return [...groups].map(([, own]) => ({
    diameter: own[0]?.diameter ?? 0,
    runs: own.map(({ id, name, length }) => ({ id, name, length })),
  }));
}

/** m from which a price is for a bag, and not for a foot or a metre of one. */
const bagLeast = 2;

/** The length in which prices say that such a duct is sold; of several the one of which the least money buys as much as the runs take. */
function coilSold({ work }: Project, diameter: number, runs: readonly CutRun[]): number | undefined {
  const s = scenario();
  const needed = runs.reduce((sum, r) => sum + r.length, 0);
  const sold = inOrder(work.prices).flatMap(([, line]) => {
    if (!('choice' in line.duct) || line.duct.choice !== 'flexible' || s.choice(line.part) !== 'run') return [];
    const [d, piece, price] = [s.maybe(line.diameter), s.maybe(line.piece), s.maybe(line.price)];
    if (d === undefined || piece === undefined || piece < bagLeast || Math.abs(d - diameter) > 5e-4) return [];
    return [{ piece, money: Math.ceil(needed / piece - 1e-9) * (price ?? Infinity) }];
  });
  return sold.sort((a, b) => a.money - b.money)[0]?.piece;
}

/** Pieces of a run of round duct: whole lengths, and a last one, where each goes into the next by its crimp. */
export function lengthsOf({ id, length }: CutRun, stock: number): { id: string; length: number; count: number }[] {
  const whole = Math.max(0, Math.ceil((length - stock) / (stock - crimp) - 1e-9));
  const last = length - whole * (stock - crimp);
  return [
    ...(whole > 0 ? [{ id: `${id} whole`, length: stock, count: whole }] : []),
    { id, length: Math.min(stock, last), count: 1 },
  ];
}
