import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

const sheet = (page: import('@playwright/test').Page) =>
  page.locator('section.sheet', { has: page.getByRole('heading', { name: 'The ducts', exact: true }) });

test('a section of the duct plan is chosen by keyboard, and the next size shows what it does at once', async ({
  page,
}) => {
  await show(page, server.url, '/trade/air');
  const ducts = sheet(page);
  await ducts.getByRole('button', { name: 'R2, Return from the hall' }).press('Enter');
  await expect(ducts.getByRole('heading', { name: 'R2 Return from the hall' })).toBeVisible();
  await expect(ducts.getByText('It lies on the hardest way')).toBeVisible();
  const flow = ducts.getByText(/With these sizes the blower moves/);
  const before = await flow.textContent();
  await ducts.getByRole('button', { name: 'Larger: 10"' }).press('Enter');
  await settled(page);
  await expect(ducts.getByRole('button', { name: 'Smaller: 9"' })).toBeVisible();
  await expect(flow).not.toHaveText(before ?? '');
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await expect(flow).toHaveText(before ?? '');
});

test('a touch on a duct in the picture chooses it, and the table says the same as the picture', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const ducts = sheet(page);
  const picture = ducts.locator('figure.duct-plan svg').first();
  // The way to the sitting room ends at its register, straight below its bend.
  const end = await picture.evaluate((svg) => {
    const way = svg.querySelectorAll('.duct.supply .duct-wall')[1]?.getAttribute('points') ?? '';
    return way.split(' ').at(-1)?.split(',').map(Number);
  });
  const [x = 0, y = 0] = end ?? [];
  await picture.click({ position: { x, y: y - 30 } });
  await expect(ducts.getByRole('heading', { name: 'S2 To the sitting room' })).toBeVisible();
  await ducts.getByText('The ducts in numbers').click();
  await expect(ducts.getByRole('row', { name: /S2 To the sitting room/ })).toContainText('8"');
});
