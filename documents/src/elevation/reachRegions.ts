import { coordinate, element, type Svg } from '../sheet/svg.ts';
import type { ElevationFacts } from './elevationFacts.ts';

/** How regions are filled, told apart in black and white: the lines of a tile of so many mm, turned. */
const fills = [
  { size: 1.6, lines: 'M0 0.8H1.6M0.8 0V1.6', turn: 45 },
  { size: 1.8, lines: 'M0 0.9H1.8', turn: -45 },
  { size: 2, lines: 'M1 0.7V1.3', turn: 0 },
  { size: 2.4, lines: 'M0 1.2H2.4', turn: 0 },
] as const;

export const letterOf = (stock: number): string => String.fromCharCode(65 + (stock % 26));
const fillOf = (stock: number): string => `url(#reach-${stock % fills.length})`;

export const regionFills = (): Svg =>
  element(
    'defs',
    {},
    ...fills.map(({ size, lines, turn }, k) =>
      element(
        'pattern',
        {
          id: `reach-${k}`,
          width: size,
          height: size,
          patternUnits: 'userSpaceOnUse',
          patternTransform: `rotate(${turn})`,
        },
        element('path', { d: lines, class: 'hatch' }),
      ),
    ),
  );

/** What each stock length reaches, row by row; `x` and `y` put m of the wall on the sheet. */
export const regions = ({ maps, asked }: ElevationFacts, x: (m: number) => number, y: (m: number) => number): Svg[] =>
  maps.flatMap(({ rows, cell, stands }) =>
    asked.stock.flatMap((_, stock) => {
      const up = stands === 'wall' ? 1 : -1;
      const d = rows
        .flatMap((row, r) =>
          row
            .filter((run) => run.stock === stock)
            .map(
              ({ from, to }) =>
                `M${coordinate(x(from * cell))} ${coordinate(y(up * r * cell))}H${coordinate(x(to * cell))}V${coordinate(y(up * (r + 1) * cell))}H${coordinate(x(from * cell))}z`,
            ),
        )
        .join('');
      return d === '' ? [] : [element('path', { d, fill: fillOf(stock), 'data-set': letterOf(stock) })];
    }),
  );
