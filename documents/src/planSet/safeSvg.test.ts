import { evaluate } from '@kneewall/engine';
import { expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { sheetsOf } from '../sheets.ts';
import { safeSvg } from './safeSvg.ts';

it.each([
  ['a picture from the disk', '<svg><image href="/etc/hostname"/></svg>'],
  ['a program', '<svg><script>1</script></svg>'],
  ['a page inside', '<svg><foreignObject/></svg>'],
  ['another document', '<!DOCTYPE svg SYSTEM "x"><svg/>'],
  ['a reference outward', '<svg><rect fill="url(http://x/y)"/></svg>'],
  ['a link outward', '<svg><path href="x"/></svg>'],
])('%s is refused', (_, svg) => expect(() => safeSvg(svg)).toThrow('assert'));

it('our own sheets pass, whatever a person typed into a name', () => {
  const project = structuredClone(demo('tern-ledge'));
  project.about = { ...project.about, name: '<image href="/etc/hostname"/>]]>&x;' };
  const sheets = sheetsOf(evaluate(project, {}).plan, project, 'us');
  expect(sheets.length).toBeGreaterThan(2);
  for (const { svg } of sheets) expect(safeSvg(svg)).toContain('&lt;image');
});
