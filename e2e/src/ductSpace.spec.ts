import { expect, type Page, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

const bath = 'routes.ducts.sections.supply-bath.space';
const box = (page: Page, field: string) => page.locator(`[id="f-${field}"]`);

test('a bay in feet and inches, and a kind that is wanted, bear on the sizes; a bay of no depth is not taken', async ({
  page,
}) => {
  await show(page, server.url, `/trade/air?field=${bath}.depth`);
  const depth = box(page, `${bath}.depth`);
  await expect(depth).toBeVisible();
  await depth.fill('0"');
  await depth.press('Enter');
  await expect(page.getByRole('alert').first()).toContainText('more than 0');
  await depth.fill(`0' 9 1/4"`);
  await depth.press('Enter');
  await box(page, `${bath}.passes`).selectOption('bay');
  await settled(page);
  const sizes = page.locator('section', { has: page.getByRole('heading', { name: 'Sizes', exact: true }) });
  await expect(sizes).toContainText('Through the bay of “To the bath”, 9 1/4" deep', { timeout: 90_000 });
  await expect(sizes).toContainText('4" flexible');
});
