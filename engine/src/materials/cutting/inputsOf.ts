import { inOrder, type ResolvedProject } from '@kneewall/project';
import { scenario } from '../../plan/scenario.ts';
import { boxesOf } from './boxesOf.ts';
import { unitJoints } from './joint/unitJoints.ts';
import { ductsOf } from './metalDuctsOf.ts';
import type { CutInputs, CutRun } from './result.ts';
import { fittedSections, sizeOf } from './sectionsOf.ts';

/** m that a crimped end goes into the next length, and that both ends of a flexible run take over their collars. Source: `cutting.ends` (common practice). */
const crimp = 1.5 * 0.0254;
const overCollars = 4 * 0.0254;

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'work' | 'candidates'>;

/** All that ducts are cut from and into, as the document has it; what is fitted already is left out. Lengths m. Never throws. */
export function inputsOf(project: Project): CutInputs {
  const { cutting } = project.routes.ducts;
  const { board, metal, straight } = cutting;
  const s = scenario();
  return {
    boxes: boxesOf(project),
    ducts: ductsOf(project),
    joints: unitJoints(project),
    board: {
      width: s.of(board.width),
      length: s.of(board.length),
      turns: s.choice(board.turns) === 'yes',
      kerf: s.of(board.kerf),
      keep: s.of(board.keep),
      form: s.choice(board.form),
    },
    metal: {
      thickness: s.of(metal.thickness),
      width: s.of(metal.width),
      length: s.of(metal.length),
      lap: s.of(metal.lap),
      kerf: s.of(metal.kerf),
    },
    pipes: byDiameter(runsOf(project, 'round')).map(({ diameter, runs }) => ({
      diameter,
      stock: s.of(straight.pipe),
      runs,
    })),
    bags: byDiameter(runsOf(project, 'flexible')).map(({ diameter, runs }) => ({
      diameter,
      coil: coilSold(project, diameter) ?? s.of(straight.coil),
      runs,
    })),
    sleeve: s.of(straight.sleeve),
    splices: s.choice(straight.splices),
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
    // What is slack in the run was cut for it; the duct goes over a collar at either end.
    const cut = kind === 'flexible' ? length / (1 - s.of(x.compression)) + overCollars : length;
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

/** The length in which a price says that such a duct is sold. */
function coilSold({ work }: Project, diameter: number): number | undefined {
  const s = scenario();
  for (const [, line] of inOrder(work.prices)) {
    if (!('choice' in line.duct) || line.duct.choice !== 'flexible') continue;
    const [d, piece] = [s.maybe(line.diameter), s.maybe(line.piece)];
    if (d !== undefined && piece !== undefined && Math.abs(d - diameter) < 5e-4) return piece;
  }
  return undefined;
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
