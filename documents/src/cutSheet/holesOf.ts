import type { System } from '@kneewall/project';
import type { Cut, CutPiece } from './cut.ts';
import { cutLength } from './cutLength.ts';

/** A hole of a flat piece: what it is for, in which side, m from the marked corner sideways and up as the piece lies, and how its place was found. */
export type MarkedHole = {
  readonly name: string;
  readonly side: string;
  readonly shape: CutPiece['holes'][number]['shape'];
  readonly sideways: number;
  readonly up: number;
  readonly how: string;
};

const sideNames: Readonly<Record<string, string>> = {
  left: 'left side',
  right: 'right side',
  top: 'top',
  bottom: 'bottom',
  cap: 'cap',
};

/** Words for a side of a box as it lies flat. */
export const sideName = (panel: string): string => sideNames[panel] ?? panel;

/** All holes of a piece with the ducts they are for; `turned` where it lies a quarter turned. */
export function holesOf(piece: CutPiece, turned: boolean, { boxes, ducts }: Cut): MarkedHole[] {
  const box = [...boxes, ...ducts].find((b) => b.id === piece.for);
  return piece.holes.map(({ id, centre: [x, y], shape }) => {
    const hole = box?.holes.find((h) => h.id === id);
    const panel = piece.panels.find((p) => x >= p.from[0] && x <= p.to[0]);
    return {
      name: hole?.name ?? id,
      side: sideName(panel?.name ?? ''),
      shape: turned && shape.kind === 'rectangle' ? { ...shape, width: shape.height, height: shape.width } : shape,
      sideways: turned ? y : x,
      up: turned ? x : y,
      how: howPlaced(hole),
    };
  });
}

function howPlaced(hole: Cut['boxes'][number]['holes'][number] | undefined): string {
  if (!hole) return '';
  const side = {
    entered: 'side entered',
    drawn: 'side as drawn',
    'in-turn': 'side not entered: left and right in turn',
  };
  return `${side[hole.side]}, place ${hole.place === 'entered' ? 'entered' : 'worked out'}${hole.short ? '; nearer than 18 in to the unit' : ''}`;
}

export const holeSize = (shape: MarkedHole['shape'], units: System): string =>
  shape.kind === 'round'
    ? `⌀ ${cutLength(shape.diameter, units)}`
    : `${cutLength(shape.width, units)} x ${cutLength(shape.height, units)}`;
