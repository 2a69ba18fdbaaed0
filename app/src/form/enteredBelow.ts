import { type Project, valueAt } from '@kneewall/project';

/** How many answers stand below a place of the document; the entries of maps count through their fields. */
export const enteredBelow = (project: Project, path: readonly string[]): number => count(valueAt(project, path));

function count(value: unknown): number {
  if (value === undefined || value === null) return 0;
  if (typeof value !== 'object' || Array.isArray(value) || 'known' in value) return 1;
  return Object.entries(value).reduce((n, [key, below]) => n + (key === 'order' ? 0 : count(below)), 0);
}
