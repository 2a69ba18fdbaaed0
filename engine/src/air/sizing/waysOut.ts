import type { DuctSizing } from './sizeDucts.ts';
import type { Relaxation } from './spec.ts';
import type { WayOut } from './wayOutWords.ts';

/** A relaxation with the name of its section and the size it would let in. */
export function wayOut({ sections }: Pick<DuctSizing, 'sections'>, r: Relaxation): WayOut {
  const { limit, from, to, enough } = r;
  const section = r.section === undefined ? undefined : sections[r.section];
  const size = section?.options.find((o) => o.id === r.option);
  return { limit, from, to, enough, ...(section ? { name: section.name } : {}), ...(size ? { size } : {}) };
}
