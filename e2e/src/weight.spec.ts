import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';

const dist = fileURLToPath(new URL('../../app/dist/', import.meta.url));

test('less than 350 kB of compressed script comes before the first drawing', () => {
  const page = readFileSync(`${dist}index.html`, 'utf8');
  const first = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map((m) => m[1] ?? '');
  expect(first.length).toBeGreaterThan(0);
  // The planning worker is asked for at once and may compete with the page for the wire.
  const worker = readdirSync(`${dist}assets`)
    .filter((name) => name.startsWith('plan.worker'))
    .map((name) => `assets/${name}`);
  const weigh = (names: readonly string[]) =>
    names.reduce((n, name) => n + gzipSync(readFileSync(dist + name)).length, 0);
  console.log(`page ${Math.round(weigh(first) / 1000)} kB, workers ${Math.round(weigh(worker) / 1000)} kB`);
  expect(weigh(first) + weigh(worker)).toBeLessThan(350_000);
});

test('the page has no script or style of its own in it, and none of its code is built from text', () => {
  const page = readFileSync(`${dist}index.html`, 'utf8');
  expect(page).not.toMatch(/<script(?![^>]*\bsrc=)/);
  expect(page).not.toMatch(/<style|\sstyle=/);
});
