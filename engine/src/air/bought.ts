import { inOrder, type ResolvedProject } from '@kneewall/project';

/** Sections that are bought are judged as they are; the others may still be changed. By section, the item. */
export type Bought = Readonly<Record<string, string>>;

const states = ['ordered', 'arrived', 'fitted'];

export function boughtSections({ items }: Pick<ResolvedProject, 'items'>): Bought {
  const entries = inOrder(items).flatMap(([id, item]) => {
    const section = /^routes\.ducts\.sections\.(.+)$/.exec(item.of ?? '')?.[1];
    const bought = 'choice' in item.state && states.includes(item.state.choice);
    return section !== undefined && bought ? [[section, id] as const] : [];
  });
  return Object.fromEntries(entries);
}

/** Whether any duct is there already. */
export const anyFitted = ({ items }: Pick<ResolvedProject, 'items'>): boolean =>
  Object.values(items).some(
    (item) =>
      (item.of ?? '').startsWith('routes.ducts.sections.') && 'choice' in item.state && item.state.choice === 'fitted',
  );
