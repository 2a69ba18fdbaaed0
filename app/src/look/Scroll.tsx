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
  const isNarrow = useRef(false);
  // Sizes are known to the observer without being asked for. Asked for after every change, each table of a wide screen
  // has the whole page laid out once more.
  useLayoutEffect(() => {
    const room = ref.current;
    if (!room || stacked) return;
    let seen = -1;
    const watch = new ResizeObserver(() => {
      if (room.clientWidth === seen) return;
      seen = room.clientWidth;
      isNarrow.current = seen < narrow;
      fit(room, isNarrow.current);
    });
    watch.observe(room);
    return () => watch.disconnect();
  }, [stacked]);
  useLayoutEffect(() => {
    const room = ref.current;
    if (!room) return;
    nameCells(room);
    if (isNarrow.current && !stacked) fit(room, true);
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reachable by keyboard
    <section className={stacked ? 'scroll stacked' : 'scroll'} aria-label={label} tabIndex={0} ref={ref}>
      {children}
    </section>
  );
}

/** Stacks a table that is wider than a narrow room. */
function fit(room: HTMLElement, isNarrow: boolean): void {
  room.classList.remove('stacked');
  if (isNarrow && room.scrollWidth > room.clientWidth + 1) room.classList.add('stacked');
}

/** Writes at each cell the head of its column, for the style to show where rows are stacked. */
function nameCells(room: HTMLElement): void {
  for (const table of room.querySelectorAll('table')) {
    const heads = [...(table.tHead?.rows[0]?.cells ?? [])].map((cell) => cell.textContent ?? '');
    for (const body of table.tBodies)
      for (const row of body.rows)
        for (const [i, cell] of [...row.cells].entries()) {
          const head = heads[i] ?? '';
          if (cell.dataset.head !== head) cell.dataset.head = head;
        }
  }
}
