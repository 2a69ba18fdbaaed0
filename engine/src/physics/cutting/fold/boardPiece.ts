import { type Board, foldDepth } from './board.ts';
import type { SideHole } from './boardBox.ts';
import {
  centreLines,
  type FlatHole,
  type FlatLine,
  type FlatMeasure,
  type FlatPanel,
  type FlatPiece,
  measure,
  reachOf,
  rectangle,
} from './pattern.ts';
import type { Section } from './sections.ts';

export type PieceSpec = {
  readonly id: string;
  readonly board: Board;
  /** Sides of this piece in the order in which they lie, with the inside size across each. */
  readonly sides: readonly { readonly name: string; readonly across: number }[];
  readonly section: Section;
  /** Where the air inside begins and ends along the walls: a cap takes the rest. */
  readonly air: { readonly from: number; readonly to: number };
  /** `u` m across from the side's left inside edge as it lies, `v` m along from the section's start. */
  readonly holes: readonly SideHole[];
};

/** Edges of the panels along the piece: each but the last takes what the table adds for a groove, the last its own. */
function edgesOf({ board, sides }: PieceSpec): number[] {
  let at = 0;
  return sides.map(({ across }, i) => {
    at += across + (i < sides.length - 1 ? board.added : board.addedLast);
    return at;
  });
}

function panelsOf(spec: PieceSpec, edges: readonly number[], height: number): FlatPanel[] {
  const depth = foldDepth(spec.board);
  const { section, air } = spec;
  const inside = { from: Math.max(air.from, section.from), to: Math.min(air.to, section.to) };
  return spec.sides.map(({ name, across }, i) => {
    const left = edges[i - 1] ?? 0;
    return {
      name,
      from: [left, 0],
      to: [edges[i] ?? left, height],
      inside: {
        from: [left + depth, inside.from - section.from],
        to: [left + depth + across, inside.to - section.from],
      },
    };
  });
}

/** Grooves to fold about, the half-board edge and the flap along the end, half-board laps at the ends of a section. */
function linesOf(spec: PieceSpec, edges: readonly number[], width: number, height: number): FlatLine[] {
  const { board, section } = spec;
  const depth = foldDepth(board);
  const last = edges.at(-1) ?? 0;
  const upright = (kind: FlatLine['kind'], x: number): FlatLine => ({ kind, from: [x, 0], to: [x, height] });
  const level = (y: number): FlatLine => ({ kind: 'lap', from: [0, y], to: [width, y] });
  return [
    ...edges.slice(0, -1).map((x): FlatLine => ({ ...upright('groove', x), width: 2 * depth })),
    // The first panel's edge lies over the last one's half board.
    upright('lap', depth),
    upright('lap', last - board.thickness / 2),
    upright('lap', last),
    ...(section.lap > 0 ? [level(height - section.lap)] : []),
    ...(section.from > 0 ? [level(board.thickness)] : []),
  ];
}

/** A duct's section, or one of its pieces, flat: panels side by side from the left, then the flap; the duct's length upward. */
export function boardPiece(spec: PieceSpec): FlatPiece {
  const edges = edgesOf(spec);
  const last = edges.at(-1) ?? 0;
  const width = last + spec.board.flap;
  const height = spec.section.to - spec.section.from + spec.section.lap;
  const panels = panelsOf(spec, edges, height);
  const holes = panels.flatMap((p): FlatHole[] =>
    spec.holes
      .filter((h) => h.side === p.name)
      .map(({ id, u, v, shape }) => ({ id, centre: [p.inside.from[0] + u, v], shape })),
  );
  const centres = holes.flatMap((h) => centreLines(h.centre, Math.max(reachOf(h).x, reachOf(h).y) + 0.02));
  const measures: FlatMeasure[] = [
    ...[...edges, width].map((x) => measure([0, 0], [x, 0], 'edge')),
    ...[...edges, width].map((x, i) => measure([edges[i - 1] ?? 0, 0], [x, 0], 'step')),
    measure([0, 0], [0, height], 'whole'),
    measure([0, 0], [width, height], 'check'),
    ...holes.flatMap(({ centre: [x, y] }) => [measure([0, y], [x, y], 'hole'), measure([x, 0], [x, y], 'hole')]),
  ];
  return {
    id: spec.id,
    outline: rectangle(width, height),
    size: { width, height },
    lines: [...linesOf(spec, edges, width, height), ...centres],
    holes,
    panels,
    measures,
  };
}
