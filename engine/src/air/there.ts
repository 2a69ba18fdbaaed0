import { inOrder, type ResolvedProject } from '@kneewall/project';

/** Ducts and registers that are in the house already, by id; of a duct whether its joints are still to be sealed. */
export type There = {
  readonly sections: Readonly<Record<string, 'kept' | 'patched'>>;
  readonly terminals: readonly string[];
};

/** What says so: the duct or register itself, or an item that is fitted and stands for it. */
export function thereOf({ routes, items }: Pick<ResolvedProject, 'routes' | 'items'>): There {
  const { sections, terminals } = routes.ducts;
  const fitted = new Set(
    inOrder(items).flatMap(([, { of, state }]) =>
      of !== undefined && 'choice' in state && state.choice === 'fitted' ? [of] : [],
    ),
  );
  return {
    sections: Object.fromEntries(
      inOrder(sections).flatMap(([id, { already }]): [string, 'kept' | 'patched'][] => {
        if ('choice' in already && already.choice !== 'new') return [[id, already.choice]];
        return fitted.has(`routes.ducts.sections.${id}`) ? [[id, 'kept']] : [];
      }),
    ),
    terminals: inOrder(terminals).flatMap(([id, { already }]) =>
      ('choice' in already && already.choice === 'kept') || fitted.has(`routes.ducts.terminals.${id}`) ? [id] : [],
    ),
  };
}
