import { expect, test } from '@playwright/test';
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
