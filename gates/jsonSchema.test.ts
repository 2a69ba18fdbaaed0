import { readFileSync } from 'node:fs';
import { projectJsonSchema } from '@kneewall/project';
import { expect, it } from 'vitest';
import { root } from './files.ts';

it('the published JSON Schema is the schema (write it again with: npm run -s schema)', () => {
  const published: unknown = JSON.parse(readFileSync(`${root}project/schema/kneewall-1.schema.json`, 'utf8'));
  expect(published).toEqual(JSON.parse(JSON.stringify(projectJsonSchema())));
});
