import { inOrder, type ResolvedProject } from '@kneewall/project';
import { leans } from '../../../physics/cutting/transition/leans.ts';
import { type Scenario, scenario } from '../../../plan/scenario.ts';
import { boardThickness } from '../boxesOf.ts';
import { type Section, sizeOf } from '../sectionsOf.ts';
import { chosenUnit } from './chosenUnit.ts';
import type { CutTransition, UnitJoint } from './result.ts';

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'candidates'>;
type Side = UnitJoint['side'];
type Handler = ResolvedProject['routes']['ducts']['handler'];

/** m by which two openings may differ and still go together: a board's or a flange's give. Common practice. */
const same = 0.001;
/** Degrees a side leans where a length is worked out, widening and narrowing: within `cutting.slopes`. */
const aim = { widening: 20, narrowing: 25 } as const;
/** m: the shortest piece that hands can fasten at both ends, and the step of a worked-out length. Common practice. */
const [shortest, step] = [4 * 0.0254, 0.5 * 0.0254];

/**
 * What goes between each opening of the chosen unit and the one duct that joins it there: nothing where they are alike and in
 * line, a piece where they are not, `unknown` where an opening is not entered. No joint where no unit is chosen or it stands
 * fitted, where several ducts join that side, or where the duct has no size yet. Never throws.
 */
export function unitJoints(project: Project): UnitJoint[] {
  const chosen = chosenUnit(project);
  if (!chosen || chosen.fitted) return [];
  const s = scenario();
  return (['supply', 'return'] as const).flatMap((side): UnitJoint[] => {
    const roots = inOrder(project.routes.ducts.sections).filter(
      ([, x]) => x.from === undefined && 'choice' in x.side && x.side.choice === side,
    );
    const [root] = roots;
    const shape = root && sizeOf(root[1], s);
    if (roots.length !== 1 || !root || !shape) return [];
    const [id, section] = root;
    const base = { side, section: id, name: section.name ?? id };
    const { width, height } = chosen.unit.openings[side];
    const missing = [width, height].find((x) => s.maybe(x) === undefined);
    if (missing) return [{ ...base, state: 'unknown', missing: missing.path }];
    const opening = { width: s.of(width), height: s.of(height) };
    const joint = project.routes.ducts.handler[side === 'supply' ? 'supplyJoint' : 'returnJoint'];
    const off = [s.of(joint.right), s.of(joint.up)] as const;
    const alike = 'width' in shape && near(shape.width, opening.width) && near(shape.height, opening.height);
    if (alike && off.every((x) => near(x, 0))) return [{ ...base, state: 'straight', opening }];
    return [
      { ...base, state: 'piece', opening, piece: pieceOf(side, section, shape, { opening, off, joint }, project, s) },
    ];
  });
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= same;

type Between = {
  readonly opening: { readonly width: number; readonly height: number };
  readonly off: readonly [number, number];
  readonly joint: Handler['supplyJoint'];
};

function pieceOf(
  side: Side,
  section: Section,
  shape: NonNullable<ReturnType<typeof sizeOf>>,
  { opening, off, joint }: Between,
  { routes }: Project,
  s: Scenario,
): CutTransition {
  const end = 'diameter' in shape ? ({ kind: 'round', ...shape } as const) : ({ kind: 'rectangle', ...shape } as const);
  const ends = { start: { kind: 'rectangle', ...opening } as const, end, offset: off };
  const board =
    end.kind === 'rectangle' &&
    s.choice(joint.made) === 'same' &&
    'choice' in section.kind &&
    section.kind.choice === 'board';
  const wanted = lengthWanted(side, ends);
  const entered = s.maybe(joint.length);
  return {
    id: `transition ${side}`,
    ...ends,
    length: entered ?? wanted,
    lengthWanted: wanted,
    lengthFrom: entered === undefined ? 'slopes' : 'entered',
    of: board ? 'board' : 'metal',
    thickness: board ? boardThickness(section, routes.ducts, s) : s.of(routes.ducts.cutting.metal.thickness),
  };
}

/** m at which no side leans more than is aimed at, the way the air goes. */
function lengthWanted(side: Side, ends: Pick<CutTransition, 'start' | 'end' | 'offset'>): number {
  const outs = leans({ ...ends, length: 1 }).map(({ outward }) => Math.tan((outward * Math.PI) / 180));
  const wants = outs.map((out) => {
    const widens = side === 'supply' ? out > 0 : out < 0;
    return Math.abs(out) / Math.tan(((widens ? aim.widening : aim.narrowing) * Math.PI) / 180);
  });
  return Math.ceil(Math.max(shortest, ...wants) / step - 1e-6) * step;
}
