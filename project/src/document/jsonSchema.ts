import * as z from 'zod/mini';
import { projectSchema, schemaVersion } from '../schema/project.ts';

/** The published JSON Schema (draft 2020-12) of a project document. Each field's own description is under `x-field`. */
export function projectJsonSchema(): object {
  return { ...z.toJSONSchema(projectSchema, { io: 'input' }), title: `Kneewall project, version ${schemaVersion}` };
}
