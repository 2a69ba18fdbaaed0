import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeFolder, mayWrite, writeWhole } from './disk.ts';

let folder = '';
const at = (name: string): string => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kneewall-disk-'));
  writeFileSync(at('mine.json'), '{"schema":1}');
  writeFileSync(at('closed.csv'), 'old');
  chmodSync(at('closed.csv'), 0o444);
  mkdirSync(at('folder'));
  symlinkSync('/dev/full', at('full.csv'));
  symlinkSync('mine.json', at('link.json'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const refusals: readonly (readonly [string, string])[] = [
  ['nowhere/out.csv', 'there is no such folder'],
  ['mine.json/out.csv', 'a file stands where a folder is named'],
  ['folder', 'it is a folder'],
  ['closed.csv', 'it may only be read'],
  ['full.csv', 'it is a device or a pipe'],
  ['mine.json', 'it is what is read'],
  ['link.json', 'it is what is read'],
  [`${'x'.repeat(300)}.csv`, 'the name is too long'],
  ['/proc/out.csv', 'nothing may be written there'],
];

describe('a file that cannot be written', () => {
  it.each(refusals)('%s is refused before any work, and named', async (name, why) => {
    const file = name.startsWith('/') ? name : at(name);
    const message = await mayWrite(file, [at('mine.json')]).then(
      () => '',
      (thrown: Error) => thrown.message,
    );
    expect(message).toContain(`Cannot write ${file}`);
    expect(message).toContain(why);
    expect(readFileSync(at('mine.json'), 'utf8')).toBe('{"schema":1}');
    expect(readFileSync(at('closed.csv'), 'utf8')).toBe('old');
  });

  it('loses nothing of what was there, and leaves nothing behind, when the disk gives out in the middle', () => {
    const script = `import { writeWhole } from ${JSON.stringify(fileURLToPath(new URL('./disk.ts', import.meta.url)))};
      try { await writeWhole('mine.json', 'x'.repeat(1e6)); } catch (e) { console.log(e.message); }`;
    writeFileSync(at('try.mts'), script);
    const tsx = fileURLToPath(new URL('../../node_modules/.bin/tsx', import.meta.url));
    // No file may grow beyond eight blocks: as full as a disk gets without one.
    const done = spawnSync('sh', ['-c', `trap '' XFSZ; ulimit -f 8; exec "${tsx}" try.mts`], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, TSX_DISABLE_CACHE: '1' },
    });
    expect(done.stdout).toContain('Cannot write mine.json');
    expect(readFileSync(at('mine.json'), 'utf8')).toBe('{"schema":1}');
    expect(readdirSync(folder).filter((f) => f.endsWith('.new'))).toEqual([]);
  });
});

describe('a file that can be written', () => {
  it('takes nobody’s neighbour, keeps its mode, and is written through a link', async () => {
    writeFileSync(at('mine.json.new'), 'somebody’s');
    chmodSync(at('mine.json'), 0o600);
    await writeWhole(at('link.json'), 'new');
    expect(readFileSync(at('mine.json'), 'utf8')).toBe('new');
    expect(readFileSync(at('mine.json.new'), 'utf8')).toBe('somebody’s');
    expect(statSync(at('mine.json')).mode & 0o777).toBe(0o600);
  });
});

describe('folders', () => {
  it('are made one in the other, and refused with a name where a file or a pseudo file system stands', async () => {
    await makeFolder(at('a/b/c'));
    expect(existsSync(at('a/b/c'))).toBe(true);
    const said = (name: string) => makeFolder(name).then(String, (thrown: Error) => thrown.message);
    expect(await said(at('mine.json/papers'))).toContain('a file stands where a folder is named');
    expect(await said(at('mine.json'))).toContain('is a file');
    const started = performance.now();
    expect(await said('/proc/x')).toContain('Cannot make the folder /proc/x: nothing can be made there');
    expect(await said('/proc/self/x/y')).toContain('Cannot make the folder');
    expect(performance.now() - started).toBeLessThan(1000);
  });
});
