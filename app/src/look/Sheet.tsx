import type { ReactNode } from 'react';
import './Sheet.css';

/** A sheet of the notebook with its heading. */
export function Sheet({
  title,
  children,
  className = '',
  id,
}: {
  title?: ReactNode;
  children: ReactNode;
  className?: string;
  id?: string;
}) {
  return (
    <section className={`sheet ${className}`} {...(id ? { id } : {})}>
      {title !== undefined && <h2>{title}</h2>}
      {children}
    </section>
  );
}
