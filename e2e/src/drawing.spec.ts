import { expect, type Page, test } from '@playwright/test';
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

async function wayOf(page: Page, section: string) {
  await show(page, server.url, '/trade/air');
  await sheetOf(page).getByRole('button', { name: section }).click();
  const fold = sheetOf(page).locator('details', { hasText: 'Way in plan' });
  await fold.locator('summary').click();
  await expect(fold.getByRole('button', { name: 'Corner 1', exact: true })).toBeVisible();
  return fold;
}

test('a corner is added by touch where the way goes, moved by keys and by drag, and undone one act at a time', async ({
  page,
}) => {
  const way = await wayOf(page, 'S2, To the sitting room');
  const list = way.getByRole('listitem');
  await expect(list).toHaveCount(4);
  const first = way.getByRole('button', { name: 'Corner 1', exact: true });
  const second = way.getByRole('button', { name: 'Corner 2', exact: true });
  await way.getByRole('button', { name: 'Add corners by touch' }).click();
  await first.scrollIntoViewIfNeeded();
  const [a, b] = [await first.boundingBox(), await second.boundingBox()];
  if (!a || !b) throw new Error('no corners');
  await page.mouse.click((a.x + b.x + a.width) / 2, a.y + a.height / 2 + 4);
  await settled(page);
  await expect(list).toHaveCount(5);
  await way.getByRole('button', { name: 'Add corners by touch' }).click();

  const box = way.getByRole('textbox', { name: 'Corner 2, Up' });
  const before = await box.inputValue();
  await second.press('ArrowDown');
  await settled(page);
  await expect(box).not.toHaveValue(before);
  const moved = await box.inputValue();

  const at = await second.boundingBox();
  if (!at) throw new Error('no corner');
  await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2);
  await page.mouse.down();
  await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2 + 40, { steps: 5 });
  await expect(way).toContainText('Drawn 3 bends');
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await expect(box).toHaveValue(moved);

  expect(await actsStored(page)).toBe(2);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await expect(list).toHaveCount(4);
});

test('the same acts go by boxes alone, in feet and inches', async ({ page }) => {
  const way = await wayOf(page, 'S2, To the sitting room');
  await way.getByRole('button', { name: 'Add one after corner 1' }).press('Enter');
  await settled(page);
  const box = way.getByRole('textbox', { name: 'Corner 2, Across' });
  await box.fill('7\' 3 1/2"');
  await box.press('Enter');
  await settled(page);
  await expect(box).toHaveValue('7\' 3 1/2"');
  await box.fill('1-2');
  await expect(way.getByText('Which do you mean?')).toBeVisible();
  await box.press('Escape');
  await way.getByRole('button', { name: 'Remove corner 2' }).press('Enter');
  await settled(page);
  await expect(way.getByRole('listitem')).toHaveCount(4);
});

test('a drawn length becomes the entered one with one act', async ({ page }) => {
  const way = await wayOf(page, 'S2, To the sitting room');
  const use = way.getByRole('button', { name: /as its length/ });
  await use.click();
  await settled(page);
  await expect(use).toHaveCount(0);
  expect(await actsStored(page)).toBe(1);
});

test('an outline tells its area as it is drawn, and says where it crosses itself', async ({ page }) => {
  await show(page, server.url, '/trade/loads?field=house.rooms.bed-south.outline');
  const fold = page.locator('details', { has: page.locator('figure.board') }).last();
  await expect(fold).toContainText('Holds 135 ft²');
  // Corner 1 pulled across the side between corners 3 and 4.
  await page.getByRole('textbox', { name: 'Corner 1, Up' }).fill("12'");
  await page.getByRole('textbox', { name: 'Corner 1, Up' }).press('Enter');
  await page.getByRole('textbox', { name: 'Corner 1, Across' }).fill("30'");
  await page.getByRole('textbox', { name: 'Corner 1, Across' }).press('Enter');
  await settled(page);
  await expect(fold).toContainText('meets the side from corner');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  await expect(fold).toContainText('Holds 135 ft²');
});
