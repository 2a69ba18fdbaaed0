import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

test('the best sizes go in with one act and come out with one', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const sizes = page.locator('section', { has: page.getByRole('heading', { name: 'Sizes', exact: true }) });
  const take = sizes.getByRole('button', { name: 'Take these sizes' });
  await expect(take).toBeVisible({ timeout: 90_000 });
  const flow = page.getByText(/The blower moves/);
  const before = await flow.textContent();
  await take.click();
  await settled(page);
  await expect(sizes).toContainText('Every duct is drawn in its best stocked size', { timeout: 90_000 });
  await expect(flow).not.toHaveText(before ?? '');
  await page.locator('main').press('Control+z');
  await expect(flow).toHaveText(before ?? '');
  await expect(take).toBeVisible({ timeout: 90_000 });
});

test('a year with the ducts tells what keeping, patching and replacing them would bring', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const ways = page.locator('section', {
    has: page.getByRole('heading', { name: 'Where to build it; keep, patch or replace' }),
  });
  await expect(ways.getByRole('row', { name: /Every joint sealed/ })).toBeVisible({ timeout: 180_000 });
  await expect(ways).toContainText('The section to change first is');
});
