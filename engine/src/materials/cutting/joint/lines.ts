import type { MaterialLine } from '../../../plan/lines.ts';
import { lengthSaid, sizeSaid } from '../../../plan/sizeSaid.ts';
import type { CutAnswers } from '../result.ts';

/** Pieces of sheet metal between unit and ducts, each with the sizes that a shop asks for; those of board are counted in the sheets. */
export const jointLines = ({ joints }: Pick<CutAnswers, 'joints'>): MaterialLine[] =>
  joints.flatMap((joint): MaterialLine[] => {
    if (joint.state !== 'piece' || joint.piece.of !== 'metal') return [];
    const { start, end, length, offset } = joint.piece;
    const aside = offset.some((x) => Math.abs(x) > 5e-4)
      ? `, off by ${lengthSaid(offset[0])} and ${lengthSaid(offset[1])}`
      : '';
    return [
      {
        id: `materials/transition:${joint.side}`,
        trade: 'materials',
        what: `Transition of sheet metal for “${joint.name}”: ${sizeWords(start)} to ${sizeWords(end)}, ${lengthSaid(length)} long${aside}; made, or cut from the cut sheet`,
        kind: 'count',
        amount: 1,
        soldBy: 1,
        for: `routes.ducts.sections.${joint.section}`,
      },
    ];
  });

type End = Extract<CutAnswers['joints'][number], { state: 'piece' }>['piece']['end'];

/** An end's inside size as a shop is asked for it. */
export const sizeWords = (end: End): string => (end.kind === 'round' ? `${sizeSaid(end)} round` : sizeSaid(end));
