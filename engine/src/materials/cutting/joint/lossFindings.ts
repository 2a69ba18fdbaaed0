import type { AirResult } from '../../../air/result.ts';
import { transitionLoss } from '../../../physics/flow/index.ts';
import { attempt, required, unresolved } from '../../../plan/outcome.ts';
import { type Found, telling } from '../../../plan/telling.ts';
import type { CutTransition, UnitJoint } from './result.ts';

const told = telling('materials', 'pieces');

/** Of the pressure across the unit that one piece may take before its length is worth a second look. Source: `cutting.joint-loss`. */
const shareMost = 0.05;

/** What each piece at the unit takes of the blower's pressure, and what a longer one would. */
export const jointLossFindings = (joints: readonly UnitJoint[], air: AirResult | undefined): Found[] =>
  joints.flatMap((joint) => (joint.state === 'piece' ? [lossOf(joint, air)] : []));

type Piece = Extract<UnitJoint, { state: 'piece' }>;

function lossOf({ side, name, piece }: Piece, air: AirResult | undefined): Found {
  const asked = attempt(() => {
    const ladder = required(air?.ladder ?? unresolved('missing', 'routes.ducts'));
    const across = required(air?.flows ?? unresolved('missing', 'routes.ducts')).staticPressure;
    return { drop: ladder.find((r) => r.atUnit && r.side === side)?.drop ?? 0, across };
  });
  const loss = lossAt(side, piece, piece.length);
  const longer = piece.lengthWanted > piece.length + 1e-6 ? piece.lengthWanted : undefined;
  return told(
    {
      id: `joint-loss:${side}`,
      kind: 'pressure',
      consequence: 'comfort',
      holdPoint: 'cut',
      source: 'cutting.joint-loss',
      limit: asked.ok ? { max: shareMost * asked.value.across } : {},
      facts: {
        side,
        name,
        length: piece.length,
        ...(asked.ok ? { share: (100 * asked.value.drop) / asked.value.across } : {}),
        ...(longer !== undefined && asked.ok
          ? { longer, thenTakes: (asked.value.drop * lossAt(side, piece, longer)) / loss }
          : {}),
      },
    },
    (rec) => {
      const { drop } = required(asked);
      // Both on the velocity in what opening and duct have in common.
      rec.step(
        'dp',
        'C * velocity_pressure',
        { C: loss, velocity_pressure: drop / loss },
        drop,
        'Pa',
        'flow.transition',
      );
      return drop;
    },
  );
}

const lossAt = (side: Piece['side'], { start, end, offset }: CutTransition, length: number): number => {
  const [from, to] = side === 'return' ? [end, start] : [start, end];
  return transitionLoss({ from, to, length, offset }).loss;
};
