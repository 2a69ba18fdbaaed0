import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { actsStored, enter, settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

const diameter = '/trade/air?field=routes.ducts.sections.return-hall.diameter';

test('a length with two meanings offers both, and nothing is kept until one is chosen', async ({ page }) => {
  await show(page, server.url, diameter);
  const box = page.getByRole('textbox', { name: 'Diameter', exact: true });
  await box.fill('1-2');
  const readings = page.locator('.quantity-readings button');
  await expect(readings).toHaveCount(2);
  await expect(page.locator('.save')).toHaveText('Demo, read-only');
  await readings.first().click();
  await settled(page);
  await expect(box).toHaveValue('14"');
  expect(await actsStored(page)).toBe(1);
});

test('what is understood stands beside the box in both systems, and nonsense is refused whole', async ({ page }) => {
  await show(page, server.url, diameter);
  const box = page.getByRole('textbox', { name: 'Diameter', exact: true });
  await box.fill('5\' 3 1/2"');
  await expect(page.getByText('5\' 3 1/2" · 1613 mm')).toBeVisible();
  await box.fill('9 apples');
  await box.press('Enter');
  await expect(page.getByText('“apples”')).toBeVisible();
  await expect(box).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('.save')).toHaveText('Demo, read-only');
});

test('the rows of a unit come from a table; a faulty one changes nothing and says where it is wrong', async ({
  page,
}) => {
  await show(page, server.url, '/trade/equipment?field=candidates.unit-24.rows');
  const take = async (text: string) => {
    const choosing = page.waitForEvent('filechooser');
    await page.getByText('Import rows').click();
    await (await choosing).setFiles({ name: 'unit.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
  };
  const heads = 'mode,speed,outdoor (°F),capacity (Btu/h),power (W)';
  await take(`${heads}\nheating,most,5,warm,2100`);
  await expect(page.getByText('Nothing was taken from unit.csv; the rows are as they were.')).toBeVisible();
  await expect(page.getByText('“warm” is not understood')).toBeVisible();
  await take(`${heads}\nheating,most,5,17000,2100\nheating,rated,47,24000,1900`);
  await expect(page.getByText(/^2 rows taken from unit\.csv\. They took the place of \d+; Undo/)).toBeVisible();
  await settled(page);
  expect(await actsStored(page)).toBe(1);
});

test('a refused file leaves the project as it was and says where it is wrong', async ({ page }) => {
  await show(page, server.url, '/project');
  await enter(page, 'Name of the project', 'Mine');
  await settled(page);
  await page.locator('input[type=file]').setInputFiles({
    name: 'broken.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"schema":1,"house":{"floorArea":{"value":-3,"known":"measured"}}}'),
  });
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('was not opened');
  await expect(alert).toContainText('house.floorArea');
  await expect(alert).toContainText('Found: -3');
  await expect(page.locator('.top-name')).toHaveText('Mine');
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'cut.json', mimeType: 'application/json', buffer: Buffer.from('{"schema":1,') });
  await expect(alert).toContainText('cut short');
  await expect(page.locator('.top-name')).toHaveText('Mine');
});

test('a saved file opens again as the same project', async ({ page }) => {
  await show(page, server.url, '/project');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('tern-ledge.json');
  await page.locator('input[type=file]').setInputFiles(await download.path());
  await settled(page);
  await expect(page.locator('.top-name')).toHaveText('Tern Ledge');
  await expect(page.locator('.save')).toHaveText('From a file, no changes');
});

test('undo and redo, by key and by button, also after a reload', async ({ page }) => {
  await show(page, server.url, '/project');
  await enter(page, 'Name of the project', 'One');
  await enter(page, 'Name of the project', 'Two');
  await settled(page);
  await page.locator('body').click({ position: { x: 2, y: 400 } });
  await page.keyboard.press('Control+z');
  await expect(page.locator('.top-name')).toHaveText('One');
  await settled(page);
  await page.reload();
  await settled(page);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page.locator('.top-name')).toHaveText('Two');
  await page.keyboard.press('Control+z');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.locator('.top-name')).toHaveText('Copy of Tern Ledge');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.keyboard.press('Control+Shift+z');
  await expect(page.locator('.top-name')).toHaveText('One');
});

test('what is still being typed outlives a reload and the way back', async ({ page }) => {
  await show(page, server.url, '/project');
  const name = page.getByRole('textbox', { name: 'Name of the project', exact: true });
  await enter(page, 'Name of the project', 'One');
  await settled(page);
  await name.fill('Two');
  await page.reload();
  await expect(page.locator('.top-name')).toHaveText('Two');
  await page.getByRole('link', { name: 'Trades' }).first().click();
  await page.goBack();
  await name.fill('Three');
  await page.goForward();
  await expect(page.locator('.top-name')).toHaveText('Three');
});

test('units switch for what is shown and typed, and change nothing else in a demo', async ({ page }) => {
  await show(page, server.url, diameter);
  await page.getByRole('button', { name: 'm °C' }).click();
  await settled(page);
  await expect(page.getByText(/m³\/s|L\/s/).first()).toBeVisible();
  await expect(page.getByText('cfm')).toHaveCount(0);
  await expect(page.locator('.save')).toHaveText('Demo, read-only');
  expect(await actsStored(page)).toBe(0);
});

test('a second tab only looks on and follows, and takes over with everything when the first closes', async ({
  context,
  page,
}) => {
  await show(page, server.url, '/project');
  await enter(page, 'Name of the project', 'First tab');
  await settled(page);
  const second = await context.newPage();
  await second.goto(`${server.url}/#/project`);
  await expect(second.getByText('Another tab has Kneewall open')).toBeVisible();
  await expect(second.getByRole('textbox', { name: 'Name of the project' })).toBeDisabled();
  await enter(page, 'Name of the project', 'Later');
  await expect(second.locator('.top-name')).toHaveText('Later');
  await page.close();
  await expect(second.getByRole('textbox', { name: 'Name of the project' })).toBeEnabled();
  await expect(second.locator('.top-name')).toHaveText('Later');
});

test('while the store refuses, the change is shown as not saved, and is kept as soon as it can be', async ({
  page,
}) => {
  await show(page, server.url, '/project');
  await page.evaluate(() => {
    const real = IDBDatabase.prototype.transaction;
    const refuse = { on: true };
    Object.assign(window, { refuse });
    IDBDatabase.prototype.transaction = function (...args: Parameters<typeof real>) {
      if (refuse.on && args[1] === 'readwrite') throw new DOMException('closing', 'InvalidStateError');
      return real.apply(this, args);
    };
  });
  const box = page.getByRole('textbox', { name: 'Name of the project' });
  await box.fill('Kept in memory');
  await box.press('Enter');
  await expect(page.locator('.save')).toContainText('Not saved: 1 change');
  await expect(page.locator('.save')).toContainText('Trying again');
  expect(await actsStored(page)).toBe(0);
  await page.evaluate(() => {
    (window as unknown as { refuse: { on: boolean } }).refuse.on = false;
  });
  await expect(page.locator('.save')).toContainText('On this device');
  expect(await actsStored(page)).toBe(1);
});

test('every write to the store is strict', async ({ page }) => {
  await page.addInitScript(() => {
    const asked: unknown[] = [];
    Object.assign(window, { asked });
    const real = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (...args: Parameters<typeof real>) {
      if (args[1] === 'readwrite') asked.push(args[2]?.durability);
      return real.apply(this, args);
    };
  });
  await show(page, server.url, '/project');
  expect(await page.evaluate(() => (window as unknown as { asked: unknown[] }).asked)).toEqual([]);
  await enter(page, 'Name of the project', 'Strict');
  await settled(page);
  expect(await page.evaluate(() => (window as unknown as { asked: unknown[] }).asked)).toEqual(['strict']);
});

test('a page from an insecure address takes no change and says why', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'isSecureContext', { value: false }));
  await page.goto(`${server.url}/#/project`);
  await expect(page.getByText('No changes are taken here')).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Name of the project' })).toBeDisabled();
  await page.goto(`${server.url}/#/trade/air?field=routes.ducts.sections.return-hall.diameter`);
  await expect(page.getByRole('textbox', { name: 'Diameter', exact: true })).toBeDisabled();
  expect(await page.locator('main :is(input, select, textarea):enabled:not([type=file])').count()).toBe(0);
});

test('an hourly weather table is imported, its columns named, and the climate then comes from it', async ({ page }) => {
  await show(page, server.url, '/trade/climate?field=site.weather.format');
  // The file of the typical year; the recorded years below it have a field of their own.
  const weather = page.locator('.weather').first();
  await weather
    .locator('input[type=file]')
    .setInputFiles({ name: 'invented-year.csv', mimeType: 'text/csv', buffer: Buffer.from(inventedYear()) });
  await settled(page);
  await expect(weather).toContainText('invented-year.csv');
  await expect(weather).toContainText('which column holds “Air temperature”');
  await expect(page.getByText('cannot be read yet')).toBeVisible();
  await expect(page.locator('.months svg')).toHaveCount(0);
  const columns = [
    ['dryBulb', 'air', '°C'],
    ['relativeHumidity', 'humid', '%'],
    ['ghi', 'level', 'W/m²'],
    ['dni', 'direct', 'W/m²'],
    ['dhi', 'sky', 'W/m²'],
  ] as const;
  for (const [column, name, unit] of columns)
    for (const [field, text] of [
      ['name', name],
      ['unit', unit],
    ] as const) {
      await page.goto(`${server.url}/#/trade/climate?field=site.weather.columns.${column}.${field}`);
      const box = page.locator(`[id="f-site.weather.columns.${column}.${field}"]`);
      await box.fill(text);
      await box.press('Enter');
    }
  await settled(page);
  await expect(page.getByText('From the imported weather year.')).toBeVisible();
  // The months come out of the job that reads the year; while it is not done there are none.
  await expect(page.locator('.months svg')).toBeVisible();
  await expect(page.getByText('Being worked out')).toHaveCount(0, { timeout: 120_000 });
  await page.reload();
  await settled(page);
  await expect(page.locator('.months svg')).toBeVisible();
});

/** A smooth year made up for this test: no place has it. */
function inventedYear(): string {
  const rows = Array.from({ length: 8760 }, (_, h) => {
    const season = Math.cos((2 * Math.PI * (h / 24 - 200)) / 365);
    const sun = Math.max(0, Math.sin((2 * Math.PI * ((h % 24) - 6)) / 24));
    const air = 8 + 14 * season + 5 * sun;
    return [air.toFixed(1), '70', (600 * sun).toFixed(0), (500 * sun).toFixed(0), (150 * sun).toFixed(0)].join(',');
  });
  return ['air,humid,level,direct,sky', ...rows].join('\n');
}

test('a finding opens with the keyboard alone, shows its working, and gives the focus back', async ({ page }) => {
  await show(page, server.url, '/');
  const line = page.locator('.finding-line').first();
  await line.focus();
  await page.keyboard.press('Enter');
  const panel = page.getByRole('dialog');
  await expect(panel).toBeVisible();
  await expect(panel.getByText('Stop and read.')).toBeVisible();
  await expect(panel.getByRole('heading', { name: 'The working' })).toBeVisible();
  await expect(panel.locator('.step-line').first()).toContainText('=');
  for (let n = 0; n < 6; n++) await page.keyboard.press('Tab');
  expect(
    await page.evaluate(
      () => document.activeElement?.closest('dialog') !== null || document.activeElement === document.body,
    ),
  ).toBe(true);
  await page.keyboard.press('Escape');
  await expect(panel).toHaveCount(0);
  await expect(line).toBeFocused();
});

test('an entry is added, named, removed and brought back', async ({ page }) => {
  await show(page, server.url, '/trade/loads?field=house.rooms');
  await page.getByRole('button', { name: 'Add: Room' }).click();
  await enter(page, 'Name', 'Lamp store');
  await settled(page);
  const entry = page.locator('.entry summary', { hasText: 'Lamp store' });
  await expect(entry).toBeVisible();
  await page.getByRole('button', { name: 'Remove Lamp store' }).click();
  await expect(entry).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(entry).toBeVisible();
});

test('what would make an unknown known is a way to its field, which then has the focus', async ({ page }) => {
  await show(page, server.url, '/project');
  await page.getByRole('button', { name: 'New project' }).click();
  await settled(page);
  await page.goto(`${server.url}/#/trade/climate`);
  await settled(page);
  await page.locator('.finding-line.unknown').first().click();
  await page.getByRole('dialog').getByRole('link', { name: 'Coldest normal night' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('textbox', { name: 'Coldest normal night', exact: true })).toBeFocused();
  await expect(page.getByRole('textbox', { name: 'Coldest normal night', exact: true })).toBeInViewport();
});
