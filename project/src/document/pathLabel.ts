import type { Project } from '../schema/project.ts';
import { nodeAt } from './nodes.ts';
import { valueAt } from './valueAt.ts';

/** Which side of a guess is meant, where one answer stands for several. */
const sides: Readonly<Record<string, string>> = {
  window: 'what the windows are',
  wall: 'what the walls are',
  ceiling: 'what lies on the ceiling',
  floor: 'what is under the floor',
  area: 'their area',
  sun: 'the sun they let in',
  u: 'the heat it lets through',
  winter: 'how cold that winter was',
  night: 'what a cold night asks beyond the mean',
};

/** What the form calls a document path: the field's label, and which entry it belongs to. */
export function pathLabel(path: string | readonly string[], project: Project): string {
  const [dotted = '', side] = (typeof path === 'string' ? path : path.join('.')).split('#');
  const keys = dotted.split('.');
  const label = nodeAt(keys)?.node.meta.label ?? keys.at(-1) ?? dotted;
  const entry = keys.findLastIndex((_, i) => nodeAt(keys.slice(0, i + 1))?.entry === true);
  const guess = side ? `${label}: ${sides[side] ?? side}` : label;
  if (entry < 0) return guess;
  const said = valueAt(project, keys.slice(0, entry + 1)) as { name?: string; expected?: string } | undefined;
  const name = said?.name ?? placeOf(project, said?.expected) ?? (keys[entry] ?? '').replaceAll('-', ' ');
  return `${guess}, ${name}`;
}

/** A reading has no name: the register or room that stands behind the colon of what it is held against, where one does. */
function placeOf(project: Project, expected: string | undefined): string | undefined {
  const at = expected?.split(':')[1];
  if (at === undefined) return undefined;
  return project.routes?.ducts?.terminals?.[at]?.name ?? project.house?.rooms?.[at]?.name;
}
