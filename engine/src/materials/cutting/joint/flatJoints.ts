import { boardTransition, type FlatPiece, metalTransition } from '../../../physics/cutting/index.ts';
import { bendRadius, neutralLine } from '../metalDuct.ts';
import type { CutInputs } from '../result.ts';
import type { FlatJoint } from './result.ts';

/** Straight parts in a quarter of a round end. Common practice. */
const parts = 4;

type Made = { readonly joint: FlatJoint; readonly pieces: readonly (FlatPiece & { readonly for: string })[] };

/** The pieces between unit and ducts, flat. What is wrong with one stands with its joint, and it has no pieces. */
export const flatJoints = ({ joints, board, metal }: Pick<CutInputs, 'joints' | 'board' | 'metal'>): Made[] =>
  joints.map((joint): Made => {
    if (joint.state !== 'piece') return { joint: { ...joint, problems: [] }, pieces: [] };
    const { piece } = joint;
    const of = piece.of === 'board' ? board : metal;
    const sheet = { width: of.length, height: of.width };
    const made =
      piece.of === 'board'
        ? boardTransition({ ...piece, sheet })
        : metalTransition({ ...piece, sheet, radius: bendRadius, neutral: neutralLine, parts, seam: metal.lap });
    return {
      joint: { ...joint, problems: made.problems },
      pieces: made.pieces.map((p) => ({ ...p, for: piece.id })),
    };
  });
