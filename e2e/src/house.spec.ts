import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

test('the house shows its hot day and its year by itself, and what would help when it is asked', async ({ page }) => {
  await show(page, server.url, '/trade/loads');
  await expect(page.getByText('The hot day is worst at')).toBeVisible({ timeout: 90_000 });
  await expect(page.getByText('of heat in an ordinary year')).toBeVisible({ timeout: 90_000 });
  await expect(page.locator('figure.curves svg')).not.toHaveCount(0);
  const help = page.locator('section', { has: page.getByRole('heading', { name: 'What would help' }) });
  await help.getByRole('button', { name: 'Work it out' }).click();
  await expect(help.getByRole('progressbar')).toBeVisible();
  await expect(help.getByRole('row', { name: /Seal the leaks/ }).first()).toBeVisible({ timeout: 180_000 });
});

test('a long computation shows how far it is, and can be stopped and begun again', async ({ page }) => {
  await show(page, server.url, '/trade/loads');
  await expect(page.getByText('of heat in an ordinary year')).toBeVisible({ timeout: 90_000 });
  const known = page.locator('section', { has: page.getByRole('heading', { name: 'Worth knowing' }) });
  await known.getByRole('button', { name: 'Work it out' }).click();
  await expect(known.getByRole('progressbar')).toBeVisible();
  await known.getByRole('button', { name: 'Stop' }).click();
  await expect(known.getByRole('progressbar')).toHaveCount(0);
  await expect(known.getByRole('button', { name: 'Work it out' })).toBeVisible();
});
