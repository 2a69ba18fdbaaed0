import { expect, type Page, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());
test.use({ serviceWorkers: 'block', viewport: { width: 1280, height: 800 } });

/** Notes when the grip takes a step, and when what the ducts do next shows another figure and has been drawn. */
const watch = (page: Page) =>
  page.evaluate(() => {
    const grip = document.querySelector('[role=slider][aria-label^="Size of S2"]');
    const now = document.querySelector('.duct-now');
    if (!grip || !now) throw new Error('nothing to watch');
    const seen = { waits: [] as number[], moved: 0, asked: 0 };
    Object.assign(window, { seen });
    addEventListener('pointermove', (e) => Object.assign(seen, { moved: e.timeStamp }), true);
    new MutationObserver(() => {
      seen.asked ||= seen.moved;
    }).observe(grip, { attributeFilter: ['aria-valuenow'] });
    new MutationObserver(() => {
      const { asked } = seen;
      seen.asked = 0;
      if (asked) requestAnimationFrame(() => setTimeout(() => seen.waits.push(performance.now() - asked)));
    }).observe(now, { subtree: true, characterData: true, childList: true });
  });

/** ms that 70 million multiply-adds take on the page's thread: about 100 ms on a quiet core of this class of machine. */
const reference = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const x = new Float64Array(1024).fill(1.0000001);
    const start = performance.now();
    let sum = 0;
    for (let i = 0; i < 70_000_000; i++) sum = sum * 0.9999999 + (x[i & 1023] ?? 0);
    return sum > 0 ? performance.now() - start : Number.NaN;
  });

test('what a size does shows while the hand still pulls, and how soon is printed', async ({ page }) => {
  test.slow();
  await show(page, server.url, '/trade/air');
  const grip = page.getByRole('slider', { name: 'Size of S2, To the sitting room' });
  await grip.scrollIntoViewIfNeeded();
  // The jobs that the first plan asks for are done by then, or at least not all at once.
  await page.waitForTimeout(10_000);
  const box = await grip.boundingBox();
  if (!box) throw new Error('no grip');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await watch(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  const references: number[] = [];
  for (let i = 0; i < 60; i++) {
    await page.mouse.move(x, y + 16 * ([0, 1, 2, 3, 2, 1, 0, -1, -2, -1][i % 10] ?? 0));
    await page.waitForTimeout(150);
    if (i % 4 === 3) references.push(await reference(page));
  }
  await page.keyboard.press('Escape');
  await page.mouse.up();
  const waits = await page.evaluate(() => (window as unknown as { seen: { waits: number[] } }).seen.waits);
  const at = (all: readonly number[], share: number) =>
    [...all].sort((a, b) => a - b)[Math.floor(all.length * share)] ?? Number.NaN;
  const [p50, p95, least] = [at(waits, 0.5), at(waits, 0.95), at(references, 0.5)];
  console.log(
    `${waits.length} steps: median ${p50.toFixed(0)} ms, 95 % within ${p95.toFixed(0)} ms; reference for 100 ms: ${least.toFixed(0)} ms`,
  );
  // How soon depends on who else uses the machine; that most steps show before the next does not.
  expect(waits.length).toBeGreaterThan(20);
});
