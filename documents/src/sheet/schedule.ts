import { element, type Svg, words } from './svg.ts';

export type Column = { readonly head: string; readonly width: number };

/** Height of a row, mm. */
export const rowHeight = 4.2;

/** A table of ruled rows; a cell too long for its column is cut with an ellipsis. `x`, `y` its upper left, mm. */
export function schedule(x: number, y: number, columns: readonly Column[], rows: readonly (readonly string[])[]): Svg {
  const wide = columns.reduce((sum, c) => sum + c.width, 0);
  const starts = columns.map((_, i) => columns.slice(0, i).reduce((sum, c) => sum + c.width, x));
  const line = (texts: readonly string[], at: number, kind: string): Svg =>
    element(
      'g',
      { class: kind },
      ...texts.map((text, i) =>
        element(
          'text',
          { x: (starts[i] ?? x) + 0.6, y: at + rowHeight - 1.3 },
          words(cut(text, columns[i]?.width ?? 0)),
        ),
      ),
      element('line', { x1: x, y1: at + rowHeight, x2: x + wide, y2: at + rowHeight, class: 'rule' }),
    );
  return element(
    'g',
    { class: 'schedule' },
    line(
      columns.map((c) => c.head),
      y,
      'head',
    ),
    ...rows.map((row, i) => line(row, y + (i + 1) * rowHeight, 'row')),
  );
}

/** Letters of the schedule are 2.6 mm high and half as wide. */
function cut(text: string, width: number): string {
  const most = Math.max(2, Math.floor((width - 1) / 1.45));
  return text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`;
}
