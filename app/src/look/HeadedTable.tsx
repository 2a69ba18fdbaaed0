import type { ReactNode } from 'react';
import { Scroll } from './Scroll.tsx';

/** A table with its heads, which scrolls by itself where the screen is narrow; `children` are its rows. */
export function HeadedTable({
  label,
  columns,
  children,
}: {
  label: string;
  columns: readonly string[];
  children: ReactNode;
}) {
  return (
    <Scroll label={label}>
      <table className="table">
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </Scroll>
  );
}
