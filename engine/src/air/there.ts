import { inOrder, type ResolvedProject } from '@kneewall/project';

/** Ducts and registers that are in the house already, by id; of a duct whether its joints are still to be sealed. */
export type There = {
  readonly sections: Readonly<Record<string, 'kept' | 'patched'>>;
  readonly terminals: readonly string[];
  /** Ducts that were there before any work: what an item says is fitted may have been hung with it, and stays a task that is ticked. */
  readonly before: readonly string[];
  /** Ducts that stay and whose hangers are missing; and ducts that are taken out, their new ones being bought. */
  readonly unhung: readonly string[];
  readonly replaced: readonly string[];
};

/** What says so: the duct or register itself, or an item that is fitted and stands for it. */
export function thereOf({ routes, items }: Pick<ResolvedProject, 'routes' | 'items'>): There {
  const { sections, terminals } = routes.ducts;
  const fitted = new Set(
    inOrder(items).flatMap(([, { of, state }]) =>
      of !== undefined && 'choice' in state && state.choice === 'fitted' ? [of] : [],
    ),
  );
  const said = (of: (typeof sections)[string]) => ('choice' in of.already ? of.already.choice : 'new');
  const stay = inOrder(sections).flatMap(([id, x]): [string, 'kept' | 'patched'][] => {
    const own = said(x);
    if (own === 'kept' || own === 'patched') return [[id, own]];
    return fitted.has(`routes.ducts.sections.${id}`) ? [[id, 'kept']] : [];
  });
  const staying = Object.fromEntries(stay);
  const all = inOrder(sections);
  return {
    sections: staying,
    before: all.flatMap(([id, x]) => (said(x) === 'kept' || said(x) === 'patched' ? [id] : [])),
    unhung: all.flatMap(([id, { hung }]) => (id in staying && 'choice' in hung && hung.choice === 'no' ? [id] : [])),
    replaced: all.flatMap(([id, x]) => (!(id in staying) && said(x) === 'replaced' ? [id] : [])),
    terminals: inOrder(terminals).flatMap(([id, { already }]) =>
      ('choice' in already && already.choice === 'kept') || fitted.has(`routes.ducts.terminals.${id}`) ? [id] : [],
    ),
  };
}
