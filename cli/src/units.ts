import type { Project, System } from '@kneewall/project';
import { unitsNamed } from './options.ts';

/** The units asked for, else the project's own. */
export const unitsOf = (asked: string | undefined, project: Project): System =>
  unitsNamed(asked) ?? (project.site?.units === 'si' ? 'si' : 'us');
