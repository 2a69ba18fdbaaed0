import { type ReactNode, useLayoutEffect, useRef } from 'react';
import './Table.css';

/** px below which a table that does not fit is stacked rather than scrolled. */
const narrow = 640;

/**
 * Room for a table. On a narrow screen one that is wider is stacked: each row its name, then its values with the heads of
 * their columns. With `stacked` it always is, for tables of many columns and long words.
 */
export function Scroll({
  label,
  stacked = false,
  children,
}: {
  label: string;
  stacked?: boolean;
  children: ReactNode;
}) {
  const ref = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const room = ref.current;
    if (!room) return;
    nameCells(room);
    let seen = -1;
    const fit = () => {
      if (room.clientWidth === seen) return;
      seen = room.clientWidth;
      room.classList.remove('stacked');
      if (stacked || (seen < narrow && room.scrollWidth > seen + 1)) room.classList.add('stacked');
    };
    const watch = new ResizeObserver(fit);
    watch.observe(room);
    fit();
    return () => watch.disconnect();
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reachable by keyboard
    <section className="scroll" aria-label={label} tabIndex={0} ref={ref}>
      {children}
    </section>
  );
}

/** Writes at each cell the head of its column, for the style to show where rows are stacked. */
function nameCells(room: HTMLElement): void {
  for (const table of room.querySelectorAll('table')) {
    const heads = [...(table.tHead?.rows[0]?.cells ?? [])].map((cell) => cell.textContent ?? '');
    for (const body of table.tBodies)
      for (const row of body.rows)
        for (const [i, cell] of [...row.cells].entries()) cell.setAttribute('data-head', heads[i] ?? '');
  }
}
