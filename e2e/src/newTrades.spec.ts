import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { enter, settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

/** The text of what a button saves. */
async function saved(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString('utf8') };
}

const finding = (page: Page, says: string) => page.locator('.finding-line', { hasText: says });

test('more height below the outlet lets the trap fit, and its drawing is saved at full size', async ({ page }) => {
  await show(page, server.url, '/trade/condensate');
  await expect(page.locator('.trap-drawing')).toContainText('seal');
  const trap = finding(page, 'below the cabinet’s outlet');
  await expect(trap.locator('.status')).toHaveText('fails');
  await enter(page, 'Free height below the drain outlet', '8"');
  await settled(page);
  // What holds lies folded, out of sight.
  await expect(trap.locator('.status')).toHaveText('ok');
  const { name, text } = await saved(page, 'Save it at full size');
  expect(name).toBe('trap.svg');
  expect(text).toContain('data-scale="1"');
  expect(text).toContain('data-measure="seal"');
});

test('another place on the wall wants another line set, and one in the snow fails', async ({ page }) => {
  await show(page, server.url, '/trade/lineset?field=routes.lineset.place.x');
  const lead = page.locator('.lead', { hasText: 'set reaches' });
  const snow = finding(page, 'The base of the outdoor unit lies');
  await expect(page.locator('.reach-board svg path[fill^=url]').first()).toBeAttached();
  await expect(page.locator('.reach-unit').first()).toBeVisible();
  await expect(snow.locator('.status')).toHaveText('fails');
  const before = await lead.textContent();
  await enter(page, 'Left edge of the outdoor unit, from the wall’s left end', '41"');
  await enter(page, 'Base of the outdoor unit above the ground', '5\' 3"');
  await settled(page);
  await expect(snow.locator('.status')).toHaveText('ok');
  await expect(lead).not.toHaveText(before ?? '');
  await expect(lead).toContainText('the 24\' 7 1/4" set reaches');
});

test('the outdoor unit is moved by mouse, by arrow keys and by a tap, and each says at once which set reaches', async ({
  page,
}) => {
  await show(page, server.url, '/trade/lineset');
  const unit = page.getByRole('button', { name: /^Outdoor unit on/ });
  const answer = page.locator('.reach-answer');
  await expect(answer).toContainText('32\' 9 11/16" set reaches');
  await unit.scrollIntoViewIfNeeded();
  const box = await unit.boundingBox();
  if (!box) throw new Error('the unit is not drawn');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 40, y - 60, { steps: 4 });
  // Before it is let go.
  await expect(answer).toContainText('24\' 7 1/4" set reaches');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(answer).toContainText('32\' 9 11/16" set reaches');
  await unit.focus();
  await page.keyboard.press('Shift+ArrowUp');
  await expect(answer).toContainText('base 33 5/8" up');
  await page.keyboard.press('Control+z');
  const board = page.locator('.reach-board');
  const tall = (await board.boundingBox())?.height ?? 0;
  await board.click({ position: { x: 60, y: tall - 60 } });
  await expect(answer).toContainText('out from the wall');
  const { text } = await saved(page, 'Save the wall as a drawing');
  expect(text).toContain('class="dimension"');
  expect(text).not.toMatch(/NaN|undefined/);
});

test('the supply is saved as a one-line drawing', async ({ page }) => {
  await show(page, server.url, '/trade/circuit');
  const { name, text } = await saved(page, 'Save the one-line drawing');
  expect(name).toBe('supply.svg');
  expect(text).toMatch(/^<\?xml.*<svg.*<\/svg>\n$/s);
  expect(text).not.toMatch(/NaN|undefined/);
});

test('own power shows its year first, without being asked', async ({ page }) => {
  test.slow();
  await show(page, server.url, '/trade/offgrid');
  await expect(page.getByRole('heading', { name: 'A year on your own power' })).toBeVisible();
  await expect(page.getByText(/The unit draws .* and the household/)).toBeVisible({ timeout: 120_000 });
});

test('the second winter’s owner takes a log in, its loss into the plan, and back out again', async ({ page }) => {
  await show(page, server.url, '/project');
  await page.getByRole('button', { name: /winter after/ }).click();
  // What has been opened is shown at home, also to whoever has gone on by then.
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tern Ledge, the winter after');
  await settled(page);
  await page.goto(`${server.url}/#/trade/commissioning`);
  const file = fileURLToPath(new URL('../../demos/files/winter-after-log.csv', import.meta.url));
  const input = page.locator('.log-import input[type=file]');
  await expect(input).toBeAttached({ timeout: 60_000 });
  await input.setInputFiles(file);
  await page.getByRole('button', { name: 'Take it like this' }).click();
  const use = page.getByRole('region', { name: 'Use it in the plan' });
  await expect(use).toContainText('of what the plan’s own house loses in the same weather', { timeout: 90_000 });
  await use.getByRole('button', { name: 'Use this in the plan' }).first().click();
  await expect(use).toContainText('In the plan since');
  await expect(finding(page, 'The plan is scaled by what was taken from a log')).toHaveCount(1);
  await show(page, server.url, '/trade/loads');
  await expect(page.locator('.asides').first()).toContainText('By the plan alone it would be');
  await page.goto(`${server.url}/#/trade/commissioning`);
  await use.getByRole('button', { name: 'Take it back' }).click();
  await expect(use).not.toContainText('In the plan since');
});

test('on a phone no table of a trade has to be pushed sideways', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await show(page, server.url, '/trade/air');
  await expect(page.getByRole('region', { name: 'Shares for heating' })).toHaveClass(/stacked/);
  const wide = await page.evaluate(() =>
    [...document.querySelectorAll('.scroll')]
      .filter((e) => e.scrollWidth > e.clientWidth + 1)
      .map((e) => e.getAttribute('aria-label')),
  );
  expect(wide).toEqual([]);
});
