import type { Project, System } from '@kneewall/project';
import { Refused } from './exit.ts';

/** The units asked for, else the project's own. */
export function unitsOf(asked: string | undefined, project: Project): System {
  if (asked !== undefined && asked !== 'us' && asked !== 'si') throw new Refused('--units is us or si.');
  return asked ?? (project.site?.units === 'si' ? 'si' : 'us');
}
