import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { actsStored, enter, settled, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block' });

test('a first answer from an empty project, with most questions left at "don’t know"', async ({ page }) => {
  // The answer by sums is looked at: what is worked out hour by hour would take its place at any time.
  await page.route('**/assets/job.worker-*.js', () => {});
  await show(page, server.url, '/');
  await page.getByRole('button', { name: 'Start with my own house' }).click();
  await settled(page);
  await expect(page.getByRole('heading', { name: 'First answer' })).toBeVisible();
  expect(await page.locator('.field').count()).toBeLessThan(25);
  await expect(page.getByText('A few answers more')).toBeVisible();
  expect(await actsStored(page)).toBe(0);

  await enter(page, 'Latitude', '45');
  await enter(page, 'Height above sea level', '300 ft');
  await enter(page, 'Coldest normal night', '5');
  await enter(page, 'Hottest normal afternoon', '88');
  await enter(page, 'Heated floor area', '1100');
  await settled(page);

  const answer = page.locator('.first-answer');
  await expect(answer).toContainText('On the coldest normal night this house needs about');
  await expect(answer.getByRole('heading', { name: 'Heat on the coldest night' })).toBeVisible();
  await expect(answer.getByRole('heading', { name: 'Cooling on the hottest afternoon' })).toBeVisible();
  await expect(answer).toContainText('Largest unknown:');
  await expect(answer.locator('.measurements li')).toHaveCount(3);

  const before = await answer.locator('.range-tape').first().textContent();
  await page.getByRole('combobox', { name: 'Draughts', exact: true }).selectOption('leaky');
  await settled(page);
  await expect(answer.locator('.range-tape').first()).not.toHaveText(before ?? '');
  await page.getByRole('combobox', { name: 'Draughts', exact: true }).selectOption('');
  await settled(page);
  expect(await answer.locator('.range-tape').first().textContent()).toBe(before);
});

test('last winter’s fuel narrows the answer; a contradiction is shown beside it and narrows nothing', async ({
  page,
}) => {
  await show(page, server.url, '/');
  await page.getByRole('button', { name: 'Start with my own house' }).click();
  await settled(page);
  await enter(page, 'Latitude', '45');
  await enter(page, 'Height above sea level', '300 ft');
  await enter(page, 'Coldest normal night', '5');
  await enter(page, 'Hottest normal afternoon', '88');
  await enter(page, 'Heated floor area', '1100');
  await settled(page);
  // The loads screen shows when the cold night is worked out, after which nothing moves by itself.
  await page.evaluate(() => {
    location.hash = '#/trade/loads';
  });
  await expect(page.getByText('The hot day is worst at')).toBeVisible({ timeout: 90_000 });
  await page.goBack();
  const answer = page.locator('.first-answer');
  const wide = await answer.locator('.range-tape').first().textContent();

  await page.getByRole('combobox', { name: 'Fuel burned', exact: true }).selectOption('oil');
  await enter(page, 'Energy in the fuel burned last winter', '16000');
  await settled(page);
  await expect(answer).toContainText('Narrowed by last winter’s fuel');
  await expect(answer.locator('.range-tape').first()).not.toHaveText(wide ?? '');

  await enter(page, 'Energy in the fuel burned last winter', '900');
  await settled(page);
  await expect(answer.getByRole('heading', { name: 'Last winter’s fuel says otherwise' })).toBeVisible();
  await expect(answer).toContainText('nothing is narrowed');
  await expect(answer.locator('.range-tape').first()).toHaveText(wide ?? '');
});

test('a change shows on the screen at once, and the plan follows; how soon is printed', async ({ page }) => {
  await show(page, server.url, '/trade/air?field=routes.ducts.sections.return-hall.diameter');
  const box = page.getByRole('textbox', { name: 'Diameter', exact: true });
  const shown: number[] = [];
  const planned: number[] = [];
  for (const inches of [10, 11, 12, 13, 14, 10, 11, 12]) {
    await box.fill(`${inches} in`);
    const times = await page.evaluate(
      () =>
        new Promise<{ shown: number; planned: number }>((done) => {
          const field = document.activeElement as HTMLInputElement;
          const start = performance.now();
          let shown = 0;
          const look = () => {
            const now = performance.now() - start;
            const unit = field.value.includes('in');
            if (shown === 0 && !unit) shown = now;
            if (shown > 0 && document.querySelector('.computing') === null && now > 5)
              return done({ shown, planned: now });
            requestAnimationFrame(look);
          };
          field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
          requestAnimationFrame(look);
        }),
    );
    shown.push(times.shown);
    planned.push(times.planned);
  }
  const worst = (list: number[]) => Math.round(Math.max(...list));
  console.log(`edit shown in at most ${worst(shown)} ms, planned in at most ${worst(planned)} ms`);
  // How soon hangs on who else uses the machine; that an edit shows ahead of its plan does not.
  for (const [i, at] of shown.entries()) expect(at).toBeLessThanOrEqual(planned[i] ?? 0);
});
