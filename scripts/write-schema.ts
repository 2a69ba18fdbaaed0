import { writeFileSync } from 'node:fs';
import { projectJsonSchema, schemaVersion } from '@kneewall/project';

/** Writes the published JSON Schema from the schema in the code. */
writeFileSync(
  new URL(`../project/schema/kneewall-${schemaVersion}.schema.json`, import.meta.url),
  `${JSON.stringify(projectJsonSchema(), null, 1)}\n`,
);
