import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import type { Leaving } from './takeOffs.ts';

export type Ducts = ResolvedProject['routes']['ducts'];
export type Section = Ducts['sections'][string];

/** What items stand for that are fitted: places in the document. */
export const fittedItems = ({ items }: Pick<ResolvedProject, 'items'>): ReadonlySet<string> =>
  new Set(
    inOrder(items).flatMap(([, { of, state }]) =>
      of !== undefined && 'choice' in state && state.choice === 'fitted' ? [of] : [],
    ),
  );

/** Sections that are in the house already are not cut: they say so, or an item that stands for them is fitted. */
export function fittedSections({ items, routes }: Pick<ResolvedProject, 'items' | 'routes'>): ReadonlySet<string> {
  const place = 'routes.ducts.sections.';
  const fitted = [...fittedItems({ items })].flatMap((of) => (of.startsWith(place) ? [of.slice(place.length)] : []));
  const said = inOrder(routes.ducts.sections).flatMap(([id, { already }]) =>
    'choice' in already && (already.choice === 'kept' || already.choice === 'patched') ? [id] : [],
  );
  return new Set([...fitted, ...said]);
}

/** The answer where one is entered. */
export const chosen = <T extends string>(field: { readonly choice: T } | { readonly missing: true }): T | undefined =>
  'choice' in field ? field.choice : undefined;

/** Inside size of a section; nothing where it is not entered whole. */
export function sizeOf(x: Section, s: Scenario): Leaving['shape'] | undefined {
  const [diameter, width, height] = [s.maybe(x.diameter), s.maybe(x.width), s.maybe(x.height)];
  if (diameter !== undefined && diameter > 0) return { diameter };
  return width !== undefined && height !== undefined && width * height > 0 ? { width, height } : undefined;
}
