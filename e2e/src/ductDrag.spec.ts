import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { actsStored, settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } });

const sheetOf = (page: Page) =>
  page.locator('section.sheet', { has: page.getByRole('heading', { name: 'The ducts', exact: true }) });
const gripOf = (page: Page) => sheetOf(page).getByRole('slider', { name: 'Size of S2, To the sitting room' });

/** The middle of something on the screen, brought there first. */
async function middleOf(what: Locator): Promise<{ x: number; y: number }> {
  await what.scrollIntoViewIfNeeded();
  const box = await what.boundingBox();
  if (!box) throw new Error('not on the screen');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Pulls so far, in small moves, and keeps hold. */
async function pull(page: Page, from: { x: number; y: number }, dx: number, dy: number): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + dx, from.y + dy, { steps: 8 });
}

/** Which way outward is at the grip, by trying: a pull inward makes the duct smaller. */
async function inward(page: Page, at: { x: number; y: number }): Promise<number> {
  await pull(page, at, 0, 20);
  const isSmaller = (await gripOf(page).getAttribute('aria-valuetext')) === '7"';
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return isSmaller ? 1 : -1;
}

test('a section pulled by its grip shows what it would do, and is one act when it is let go', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const grip = gripOf(page);
  await expect(grip).toHaveAttribute('aria-valuetext', '8"');
  const now = sheetOf(page).locator('.duct-now');
  const before = await now.textContent();
  const at = await middleOf(grip);
  const sign = await inward(page, at);
  await expect(grip).toHaveAttribute('aria-valuetext', '8"');
  await expect(now).toHaveText(before ?? '');
  await pull(page, at, 0, sign * 36);
  await expect(grip).toHaveAttribute('aria-valuetext', '6"');
  await expect(now).toContainText('was 595 cfm');
  expect(await actsStored(page)).toBe(0);
  await page.mouse.up();
  await settled(page);
  await expect(now).not.toContainText('was');
  expect(await actsStored(page)).toBe(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await expect(grip).toHaveAttribute('aria-valuetext', '8"');
  await expect(now).toContainText('595 cfm');
});

test('a drag that is given up changes nothing and writes nothing', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const grip = gripOf(page);
  const at = await middleOf(grip);
  await pull(page, at, 0, 40);
  await expect(grip).not.toHaveAttribute('aria-valuetext', '8"');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(grip).toHaveAttribute('aria-valuetext', '8"');
  expect(await actsStored(page)).toBe(0);
});

test('arrow keys at a grip step through the stocked sizes', async ({ page }) => {
  await show(page, server.url, '/trade/air');
  const grip = gripOf(page);
  await grip.press('ArrowUp');
  await settled(page);
  await expect(grip).toHaveAttribute('aria-valuetext', '9"');
  await expect(sheetOf(page).getByRole('button', { name: 'Smaller: 8"' })).toBeVisible();
  await page.locator('main').press('Control+z');
  await expect(grip).toHaveAttribute('aria-valuetext', '8"');
});

test('by touch a section is tapped before it can be pulled, so that a thumb may scroll', async ({ browser }) => {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await show(page, server.url, '/trade/air');
  const grip = gripOf(page);
  await expect(grip).toHaveCount(0);
  await sheetOf(page).getByRole('button', { name: 'S2, To the sitting room' }).tap();
  await sheetOf(page)
    .locator('.duct-plan')
    .evaluate((e) => e.scrollIntoView());
  const { x, y } = await middleOf(grip);
  const client = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', dy = 0) =>
    client.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x, y: y + dy }] });
  await touch('touchStart');
  for (const dy of [6, 12, 18, 24]) await touch('touchMove', dy);
  await expect(grip).not.toHaveAttribute('aria-valuetext', '8"');
  await touch('touchEnd');
  await settled(page);
  expect(await actsStored(page)).toBe(1);
  await context.close();
});

test('a section that is ordered stays as it is and says why', async ({ page }) => {
  await show(page, server.url, '/project');
  await page.locator('input[type=file]').setInputFiles({
    name: 'ordered.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(ordered)),
  });
  await settled(page);
  await show(page, server.url, '/trade/air');
  const grip = sheetOf(page).getByRole('slider', { name: 'Size of S1, Trunk' });
  await expect(grip).toHaveAttribute('aria-disabled', 'true');
  const at = await middleOf(grip);
  await pull(page, at, 30, 30);
  await page.mouse.up();
  await expect(sheetOf(page).getByRole('status')).toContainText('It is ordered');
  await grip.press('ArrowUp');
  await expect(grip).toHaveAttribute('aria-valuetext', '10"');
});

const measured = (value: number) => ({ value, known: 'measured' });
const ordered = {
  schema: 1,
  site: { units: 'us' },
  routes: { ducts: { sections: { trunk: { name: 'Trunk', diameter: measured(0.254), length: measured(3) } } } },
  items: { one: { of: 'routes.ducts.sections.trunk', state: 'ordered' } },
};

for (const theme of ['light', 'dark', 'sunlight'])
  for (const [size, viewport] of Object.entries({
    phone: { width: 390, height: 844 },
    desktop: { width: 1280, height: 800 },
  }))
    test(`grips and boards are clean for the accessibility checker, ${theme}, ${size}`, async ({ browser }) => {
      test.slow();
      const context = await browser.newContext({ viewport, reducedMotion: 'reduce', serviceWorkers: 'block' });
      await context.addInitScript((t) => localStorage.setItem('kneewall.theme', t), theme);
      const page = await context.newPage();
      await show(page, server.url, '/trade/air');
      await sheetOf(page).getByRole('button', { name: 'S2, To the sitting room' }).click();
      await sheetOf(page).getByText('Way in plan').click();
      await expect(sheetOf(page).getByRole('button', { name: 'Corner 1', exact: true })).toBeVisible();
      const { violations } = await new AxeBuilder({ page })
        .include('section.sheet:has(.duct-plan)')
        .options({ rules: { 'color-contrast-enhanced': { enabled: theme === 'sunlight' } } })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
        .analyze();
      expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(' | ')}`)).toEqual([]);
      await context.close();
    });
