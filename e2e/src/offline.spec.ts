import { readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test } from '@playwright/test';
import { startAppServer } from './appServer.ts';
import { actsStored, enter, settled, show } from './screens.ts';

test('a change to the demo moves a finding, and is kept when the server is gone', async ({ page }) => {
  const server = await startAppServer();
  try {
    await show(page, server.url, '/trade/air');
    await expect(page.getByText('Demo, read-only')).toBeVisible();
    expect(await page.evaluate(() => indexedDB.databases().then((all) => all.length))).toBeLessThanOrEqual(1);
    await page.goto(`${server.url}/#/trade/air?field=routes.ducts.sections.return-hall.diameter`);
    const finding = page.locator('.finding-line', { hasText: 'in “Return from the hall”' });
    const before = await finding.first().textContent();
    await enter(page, 'Diameter', '14 in');
    await settled(page);
    await expect(page.getByRole('heading', { name: /Since the last change: Diameter/ })).toBeVisible();
    await expect(page.locator('.top-name')).toHaveText('Copy of Tern Ledge');
    await page
      .getByText(/\d+ hold/)
      .first()
      .click();
    await expect(finding.first()).not.toHaveText(before ?? '');
    expect(await actsStored(page)).toBe(1);

    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await server.kill();
    await page.reload();
    await settled(page);
    await expect(page.locator('.top-name')).toHaveText('Copy of Tern Ledge');
    await expect(page.getByRole('textbox', { name: 'Diameter', exact: true })).toHaveValue('14"');
    await page.goto(`${server.url}/#/`);
    await expect(page.getByRole('heading', { name: 'Decide' })).toBeVisible();
    expect(await actsStored(page)).toBe(1);
  } finally {
    await server.kill();
  }
});

test('a browser that is killed keeps everything it called saved', async () => {
  const server = await startAppServer();
  const profile = await mkdtemp(join(tmpdir(), 'kneewall-profile-'));
  const { args, executablePath } = test.info().project.use.launchOptions ?? {};
  const options = { ...(args ? { args } : {}), ...(executablePath ? { executablePath } : {}) };
  try {
    for (let round = 1; round <= 3; round++) {
      const context = await chromium.launchPersistentContext(profile, options);
      const page = await context.newPage();
      await show(page, server.url, '/project');
      if (round > 1) await expect(page.locator('.top-name')).toHaveText(`Name ${round - 1}`);
      await enter(page, 'Name of the project', `Name ${round}`);
      await expect(page.locator('.save')).toContainText('On this device');
      killBrowserOf(profile);
      await context.close().catch(() => undefined);
    }
  } finally {
    await server.kill();
    await rm(profile, { recursive: true, force: true });
  }
});

/** Ends, as if the battery fell out, the browser processes that this very profile started. */
function killBrowserOf(profile: string): void {
  for (const entry of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    const line = commandLine(entry);
    if (line.includes(`--user-data-dir=${profile}`)) process.kill(Number(entry), 'SIGKILL');
  }
}

function commandLine(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}
