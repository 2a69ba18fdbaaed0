import type { DuctShape } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import type { Change } from '../../../session/act.ts';

/** A size as it goes into the document: a diameter, or width and height, and never both. */
export function sizeChanges(id: string, shape: DuctShape): Change[] {
  const at = (field: string, value: number | undefined) => ({
    path: ['routes', 'ducts', 'sections', id, field],
    after: value === undefined ? undefined : { value, known: 'estimated' },
  });
  const [diameter, width, height] =
    'diameter' in shape ? [shape.diameter, undefined, undefined] : [undefined, shape.width, shape.height];
  return [at('diameter', diameter), at('width', width), at('height', height)];
}

const bought = ['ordered', 'arrived', 'fitted'];

/** How far the purchase of a section has gone, where its size is no longer a choice. */
export const boughtState = (items: Project['items'], id: string): string | undefined =>
  Object.values(items ?? {}).find(
    (item) => item.of === `routes.ducts.sections.${id}` && bought.includes(item.state ?? ''),
  )?.state;

/** Why a bought section cannot be resized. */
export const boughtWords = (state: string): string =>
  `It is ${state}: what is bought is judged as it is. Where its size is entered wrongly, correct it below.`;
