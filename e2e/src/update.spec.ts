import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import { startAppServer } from './appServer.ts';
import { enter, settled, show } from './screens.ts';

const dist = fileURLToPath(new URL('../../app/dist/', import.meta.url));

test('a newer app waits for a tap, and never swaps the code under a running page', async ({ page }) => {
  const root = await mkdtemp(join(tmpdir(), 'kneewall-dist-'));
  await cp(dist, root, { recursive: true });
  const server = await startAppServer(0, root);
  try {
    await show(page, server.url, '/project');
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await expect(page.getByText('works without a network')).toBeVisible();
    await enter(page, 'Name of the project', 'Mine');
    await settled(page);

    // A next version as a build would leave it: another page, and a worker that names it.
    const html = await readFile(join(root, 'index.html'), 'utf8');
    await writeFile(join(root, 'index.html'), html.replace('<title>', '<meta name="edition" content="next"><title>'));
    const worker = await readFile(join(root, 'sw.js'), 'utf8');
    await writeFile(
      join(root, 'sw.js'),
      worker.replace(
        /url:"index\.html",revision:"[^"]*"|revision:"[^"]*",url:"index\.html"/,
        'url:"index.html",revision:"next"',
      ),
    );

    await page.reload();
    await settled(page);
    const change = page.getByRole('button', { name: 'Change to the newer Kneewall' });
    await expect(change).toBeVisible();
    expect(await page.locator('meta[name=edition]').count()).toBe(0);
    await Promise.all([page.waitForEvent('load'), change.click()]);
    await settled(page);
    await expect(page.locator('meta[name=edition]')).toHaveCount(1);
    await expect(page.locator('.top-name')).toHaveText('Mine');
  } finally {
    await server.kill();
    await rm(root, { recursive: true, force: true });
  }
});
