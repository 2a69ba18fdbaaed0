import type { ReactNode } from 'react';
import { HeadedTable } from './HeadedTable.tsx';

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
      <HeadedTable label={title} columns={columns}>
        {children}
      </HeadedTable>
    </details>
  );
}
