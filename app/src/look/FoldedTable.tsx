import type { ReactNode } from 'react';
import { Scroll } from './Scroll.tsx';

/** The numbers behind a picture: a table that opens when it is asked for. */
export function FoldedTable({
  title,
  columns,
  children,
}: {
  title: string;
  columns: readonly string[];
  children: ReactNode;
}) {
  return (
    <details className="fold">
      <summary>
        <span className="fold-title">{title}</span>
      </summary>
      <Scroll label={title}>
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
    </details>
  );
}
