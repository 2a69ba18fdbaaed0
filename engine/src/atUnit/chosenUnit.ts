import { inOrder, type ResolvedProject } from '@kneewall/project';

type Chosen = { readonly id: string; readonly unit: ResolvedProject['candidates'][string] };

/** The unit the plan is made for: the one marked, or the only one. */
export function chosenUnit({ candidates }: Pick<ResolvedProject, 'candidates'>): Chosen | undefined {
  const all = inOrder(candidates);
  const marked = all.filter(([, c]) => c.chosen);
  const [one] = marked.length > 0 ? marked : all.length === 1 ? all : [];
  return one && { id: one[0], unit: one[1] };
}
