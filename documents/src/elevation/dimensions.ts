import { element, type Svg, words } from '../sheet/svg.ts';

/** A measure from one place to another along an axis, mm on the sheet, and what it says. */
export type Dimension = { readonly from: number; readonly to: number; readonly at: number; readonly says: string };

/** A level measure with its ticks, its words under it. */
export const across = ({ from, to, at, says }: Dimension): Svg =>
  element(
    'g',
    { class: 'dimension', 'data-mm': Math.abs(to - from) },
    element('line', { x1: from, y1: at, x2: to, y2: at, class: 'measure' }),
    ...[from, to].map((x) => element('line', { x1: x, y1: at - 1.3, x2: x, y2: at + 1.3, class: 'measure' })),
    element('text', { x: (from + to) / 2, y: at + 3.1, 'text-anchor': 'middle', class: 'small' }, words(says)),
  );

/** mm that a small letter is wide, about. */
const letter = 1.4;

/** An upright one, its words turned along it; words longer than it begin at its foot and go on above it. */
export function upright({ from, to, at, says }: Dimension): Svg {
  const fits = letter * says.length <= Math.abs(to - from);
  return element(
    'g',
    { class: 'dimension', 'data-mm': Math.abs(to - from) },
    element('line', { x1: at, y1: from, x2: at, y2: to, class: 'measure' }),
    ...[from, to].map((y) => element('line', { x1: at - 1.3, y1: y, x2: at + 1.3, y2: y, class: 'measure' })),
    element(
      'text',
      {
        transform: `translate(${(at - 1).toFixed(2)} ${(fits ? (from + to) / 2 : Math.max(from, to) - 1).toFixed(2)}) rotate(-90)`,
        'text-anchor': fits ? 'middle' : 'start',
        class: 'small',
      },
      words(says),
    ),
  );
}
