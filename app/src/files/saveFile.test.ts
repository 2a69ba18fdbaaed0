import { describe, expect, it } from 'vitest';
import { fileName } from './saveFile.ts';

describe('the name of a saved file', () => {
  it.each([
    ['Copy of Tern Ledge', 'copy-of-tern-ledge.json'],
    ['../../etc/passwd', 'etc-passwd.json'],
    ['   ', 'kneewall-project.json'],
    [undefined, 'kneewall-project.json'],
    ['x'.repeat(500), `${'x'.repeat(60)}.json`],
  ])('from %j is %j', (name, expected) => expect(fileName(name)).toBe(expected));
});
