import { unresolved } from '../../../plan/outcome.ts';
import { type Found, telling } from '../../../plan/telling.ts';
import type { FlatJoint, UnitJoint } from './result.ts';
import { slopeMost, steepest } from './steepest.ts';

const told = telling('materials', 'pieces');
const base = { kind: 'angle', consequence: 'money', holdPoint: 'cut', source: 'cutting.slopes' } as const;

/** How each duct joins the unit: that its opening is known, and that no side of the piece between leans too much. */
export const jointFindings = (joints: readonly (UnitJoint | FlatJoint)[]): Found[] =>
  joints.flatMap((joint) => [jointFinding(joint), ...wrongPiece(joint)]);

function jointFinding(joint: UnitJoint): Found {
  const { side, name, state } = joint;
  const worst = state === 'piece' ? steepest(side, joint.piece) : undefined;
  return told(
    {
      ...base,
      id: `joint:${side}`,
      limit: { max: slopeMost[worst?.way ?? 'widening'] },
      facts: {
        side,
        name,
        state,
        ...(state === 'piece' ? pieceFacts(joint) : {}),
        ...(state === 'shared' ? sharedFacts(joint) : {}),
        ...(worst ? { way: worst.way } : {}),
      },
    },
    (rec) => {
      if (state === 'unknown') return unresolved('missing', joint.missing);
      if (!worst || state !== 'piece') {
        rec.step('lean', 'table', {}, 0, '°', base.source);
        return 0;
      }
      const given = { out: worst.out, length: joint.piece.length };
      const lean = (Math.atan(given.out / given.length) * 180) / Math.PI;
      rec.step('lean', 'atan(out / length) * 180 / 3.141592653589793', given, lean, '°', base.source);
      return lean;
    },
  );
}

type Piece = Extract<UnitJoint, { state: 'piece' }>;

function pieceFacts({ opening, piece }: Piece): Record<string, number | string> {
  const { end, offset, length, lengthWanted, lengthFrom } = piece;
  return {
    width: opening.width,
    height: opening.height,
    ...(end.kind === 'round' ? { diameter: end.diameter } : { toWidth: end.width, toHeight: end.height }),
    right: offset[0],
    up: offset[1],
    length,
    lengthWanted,
    lengthFrom,
    of: piece.of,
  };
}

const sharedFacts = ({ opening, length, ducts, of }: Extract<UnitJoint, { state: 'shared' }>) => ({
  ...opening,
  length,
  ducts,
  of,
});

/** A piece that cannot be cut from the sheets as entered. */
function wrongPiece(joint: UnitJoint | FlatJoint): Found[] {
  if (!('problems' in joint) || joint.problems.length === 0) return [];
  const { side, name, problems } = joint;
  const [problem] = problems;
  const facts = { side, name, code: problem?.code ?? '', number: problems.length };
  return [
    told(
      { ...base, kind: 'count', id: `joint-cut:${side}`, limit: { max: 0 }, source: 'cutting.board', facts },
      (rec) => {
        rec.step('number', 'table', {}, problems.length, '', 'cutting.board');
        return problems.length;
      },
    ),
  ];
}
