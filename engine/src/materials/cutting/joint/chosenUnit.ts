import { inOrder, type ResolvedProject } from '@kneewall/project';

type Unit = ResolvedProject['candidates'][string];

/** The unit the plan is made for: the one marked, or the only one; and whether it hangs there already. */
export function chosenUnit({
  candidates,
  items,
}: Pick<ResolvedProject, 'candidates' | 'items'>): { readonly unit: Unit; readonly fitted: boolean } | undefined {
  const all = inOrder(candidates);
  const marked = all.filter(([, c]) => c.chosen);
  const [one] = marked.length > 0 ? marked : all.length === 1 ? all : [];
  if (!one) return undefined;
  const [id, unit] = one;
  const fitted = inOrder(items).some(
    ([, { of, state }]) => of === `candidates.${id}` && 'choice' in state && state.choice === 'fitted',
  );
  return { unit, fitted };
}
