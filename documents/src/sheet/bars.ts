import { element, type Svg, words } from './svg.ts';

/** A 100 mm and a 4 in bar: whoever prints can prove that the sheet is true to scale. */
export function printBars(x: number, y: number): Svg {
  return element('g', { class: 'print-bars' }, bar(x, y, 100, 10, '100 mm'), bar(x, y + 6, 101.6, 25.4, '4 in'));
}

function bar(x: number, y: number, length: number, step: number, says: string): Svg {
  const ticks = Array.from({ length: Math.round(length / step) + 1 }, (_, i) => x + i * step);
  return element(
    'g',
    {},
    element('line', { x1: x, y1: y, x2: x + length, y2: y, class: 'bar', 'data-mm': length }),
    ...ticks.map((at) => element('line', { x1: at, y1: y - 1.2, x2: at, y2: y + 1.2, class: 'tick' })),
    element('text', { x: x + length + 2, y: y + 1, class: 'small' }, words(says)),
  );
}

/** A length in the house at the drawing's scale, in halves. */
export function scaleBar(
  x: number,
  y: number,
  { metres, ratio, says }: { metres: number; ratio: number; says: string },
): Svg {
  const long = (1000 * metres) / ratio;
  return element(
    'g',
    { class: 'scale-bar' },
    element('rect', { x, y, width: long / 2, height: 1.4, class: 'full' }),
    element('rect', { x: x + long / 2, y, width: long / 2, height: 1.4, class: 'hollow' }),
    element('text', { x: x + long + 2, y: y + 1.6, class: 'small' }, words(says)),
  );
}

/** An arrow to the north; `top` is the compass direction that the top of the plan looks to, degrees. */
export function northArrow(x: number, y: number, top: number): Svg {
  return element(
    'g',
    { class: 'north', transform: `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${(-top).toFixed(2)})` },
    element('circle', { cx: 0, cy: 0, r: 5, class: 'hollow' }),
    element('path', { d: 'M0 -5 L2.2 3.6 L0 2 L-2.2 3.6 Z', class: 'full' }),
    element('text', { x: 0, y: -6, 'text-anchor': 'middle', class: 'small' }, words('N')),
  );
}
