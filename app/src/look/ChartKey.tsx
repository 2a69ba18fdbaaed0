import type { ReactNode } from 'react';
import './ChartKey.css';

/** What the marks of a chart stand for: each drawn once more (in a box of `box`, as an SVG's viewBox) beside its words. */
export function ChartKey({
  entries,
  box,
  hidden = false,
}: {
  entries: readonly { key: string; mark: ReactNode; said: ReactNode }[];
  box: readonly [width: number, height: number];
  hidden?: boolean;
}) {
  const [width, height] = box;
  return (
    <ul className="chart-key" {...(hidden ? { 'aria-hidden': true } : {})}>
      {entries.map(({ key, mark, said }) => (
        <li key={key}>
          <svg
            viewBox={`0 0 ${width} ${height}`}
            style={{ aspectRatio: `${width} / ${height}` }}
            aria-hidden="true"
            focusable="false"
          >
            {mark}
          </svg>
          {said}
        </li>
      ))}
    </ul>
  );
}
