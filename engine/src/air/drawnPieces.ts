import { inOrder } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import type { Ducts } from './model.ts';
import type { There } from './there.ts';

/** Inner size, m; nothing where it is not entered whole. */
export type PieceSize = { readonly diameter: number } | { readonly width: number; readonly height: number };

/** Fittings of one kind in a section, or the boot of a register, with the sizes by which they are bought. */
export type DrawnPiece = {
  readonly id: string;
  readonly kind: string;
  readonly count: number;
  /** The document entry it is for. */
  readonly for: string;
  /** What that is called. */
  readonly name: string;
  /** The duct it sits on. */
  readonly size?: PieceSize;
  /** Of a tee or reducer the duct nearer the unit; of a boot the face. */
  readonly other?: PieceSize;
  /** A reducer that is cut from sheet metal is not bought. */
  readonly cut?: true;
  /** Degrees that a bend turns, where entered. */
  readonly angle?: number;
};

/** Every fitting drawn on ducts that are to be made and a boot for each supply register on them, in the document's order. Ends the enclosing attempt where a fitting has no kind. */
export function drawnPieces(ducts: Ducts, there: There, s: Scenario): DrawnPiece[] {
  const sizeOf = (id: string | undefined): { size?: PieceSize } => {
    const x = id === undefined ? undefined : ducts.sections[id];
    return x ? sized(x, s) : {};
  };
  const made = inOrder(ducts.sections).filter(([id]) => !(id in there.sections));
  const fittings = made.flatMap(([id, x]) =>
    inOrder(x.fittings).map(([own, f]): DrawnPiece => {
      const [other, angle] = [sizeOf(x.from).size, s.maybe(f.angle)];
      return {
        id: `${id}-${own}`,
        kind: s.choice(f.kind),
        count: s.of(f.count),
        for: `routes.ducts.sections.${id}`,
        name: x.name ?? id,
        ...sized(x, s),
        ...(other ? { other } : {}),
        ...(angle === undefined ? {} : { angle }),
        ...(s.choice(f.reducer.made) === 'cut' ? { cut: true } : {}),
      };
    }),
  );
  const boots = inOrder(ducts.terminals).flatMap(([id, t]): DrawnPiece[] => {
    const section = t.section === undefined ? undefined : ducts.sections[t.section];
    if (!section || (t.section ?? '') in there.sections || s.choice(section.side) !== 'supply') return [];
    const [width, height] = [s.maybe(t.width), s.maybe(t.height)];
    const turns = inOrder(section.fittings).some(([, f]) => s.choice(f.kind) === 'boot-elbow');
    return [
      {
        id,
        kind: turns ? 'boot-elbow' : 'boot',
        count: 1,
        for: `routes.ducts.terminals.${id}`,
        name: t.name ?? id,
        ...sized(section, s),
        ...(width === undefined || height === undefined ? {} : { other: { width, height } }),
      },
    ];
  });
  // A boot that is drawn as a fitting is the register's own.
  return [...fittings.filter((f) => !f.kind.startsWith('boot')), ...boots];
}

function sized(x: Ducts['sections'][string], s: Scenario): { size?: PieceSize } {
  const [diameter, width, height] = [s.maybe(x.diameter), s.maybe(x.width), s.maybe(x.height)];
  if (diameter !== undefined && diameter > 0) return { size: { diameter } };
  return width !== undefined && height !== undefined && width * height > 0 ? { size: { width, height } } : {};
}
