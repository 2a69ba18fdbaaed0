import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { startAppServer } from './appServer.ts';

const dist = fileURLToPath(new URL('../../app/dist/', import.meta.url));
const indexHtml = readFileSync(`${dist}index.html`, 'utf8');

/** The named scripts, and all that they import before they run. */
function withImports(names: readonly string[], seen = new Set<string>()): Set<string> {
  for (const name of names.filter((n) => !seen.has(n))) {
    seen.add(name);
    const text = readFileSync(`${dist}assets/${name}`, 'utf8');
    withImports(
      [...text.matchAll(/(?:from|import)"\.\/([^"]+\.js)"/g)].map((m) => m[1] ?? ''),
      seen,
    );
  }
  return seen;
}

/** Page, planning worker and the demo that a fresh device opens, each with its imports. */
function beforeCounts(): Set<string> {
  const page = [...indexHtml.matchAll(/(?:src|href)="\/assets\/([^"]+\.js)"/g)].map((m) => m[1] ?? '');
  const others = readdirSync(`${dist}assets`).filter((name) => /^(plan\.worker|tern-ledge)-.*\.js$/.test(name));
  expect([page.length > 0, others.length]).toEqual([true, 2]);
  return withImports([...page, ...others]);
}

test('less than 280 kB of compressed script comes before home shows its counts', async ({ page }) => {
  const server = await startAppServer();
  const first = beforeCounts();
  const given = new Set<string>();
  let drawn = (): void => undefined;
  const counts = new Promise<void>((resolve) => {
    drawn = resolve;
  });
  try {
    // Whatever else is asked for is held back until the counts stand there, which proves that they need no more.
    await page.route('**/assets/*.js', async (route) => {
      const name = new URL(route.request().url()).pathname.split('/').at(-1) ?? '';
      if (first.has(name)) given.add(name);
      else await counts;
      await route.continue();
    });
    await page.goto(server.url);
    await page.locator('.screen-head .counts').waitFor();
    expect(await page.locator('.finding-line').count()).toBe(0);
    expect([...given].sort()).toEqual([...first].sort());
    const weights = [...first].map((name) => [name, gzipSync(readFileSync(`${dist}assets/${name}`)).length] as const);
    const total = weights.reduce((n, [, bytes]) => n + bytes, 0);
    console.log(
      [...weights, ['in all', total] as const].map(([n, b]) => `${(b / 1000).toFixed(1)} kB ${n}`).join('\n'),
    );
    expect(total).toBeLessThan(280_000);
    drawn();
    await page.locator('.finding-line').first().waitFor();
  } finally {
    await server.kill();
  }
});

test('the page has no script or style of its own in it, and none of its code is built from text', () => {
  expect(indexHtml).not.toMatch(/<script(?![^>]*\bsrc=)/);
  expect(indexHtml).not.toMatch(/<style|\sstyle=/);
});
