import type { Cut } from './cut.ts';

/** How the ducts and pieces on a sheet join the unit, a sentence each; `cut` are the ids of what is cut from it. */
export const jointNotes = ({ joints }: Pick<Cut, 'joints'>, cut: readonly string[]): string[] =>
  joints.flatMap((joint): string[] => {
    const [name, side] = [`“${joint.name}”`, `the unit’s ${joint.side} opening`];
    if (joint.state === 'piece' && cut.includes(joint.piece.id))
      return [
        joint.piece.of === 'board'
          ? `Unit to ${name}: seen from the unit, looking along the duct; corners 1 and 2 lie at the unit. Shave the laps where its corners lean until it closes; bevel both ends.`
          : `Unit to ${name}: bent up from the side that is seen; its corners begin with 1 at the unit. Its ends are cut to the line: join them by angle and drive cleat, or leave 1 in (25 mm) beyond for a flange.`,
      ];
    if (joint.state === 'shared' && cut.includes(`unit:${joint.side}`))
      return [`The box on ${side} goes over its flange; ${name} leave it by their holes.`];
    if (!cut.includes(joint.section)) return [];
    if (joint.state === 'straight') return [`${name} joins ${side} straight: alike and in line, no piece between.`];
    return joint.state === 'unknown' ? [`${name}: ${side} is not entered. Measure it before the first cut.`] : [];
  });
