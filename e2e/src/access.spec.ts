import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { screens, show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(async () => server.kill());

const sizes = { phone: { width: 390, height: 844 }, desktop: { width: 1440, height: 900 } } as const;
/** What a theme can break is colour alone; all else stands in light, where everything is asked. */
const asked = {
  light: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  dark: ['cat.color'],
  sunlight: ['cat.color'],
} as const;
const withFinding = '/?finding=equipment%2Fstrips%3Aunit-24';

for (const [size, viewport] of Object.entries(sizes))
  for (const theme of ['light', 'dark', 'sunlight'] as const)
    test(`every screen, ${theme}, ${size}: the accessibility checker finds nothing${theme === 'sunlight' ? ', and text stands out at 7 to 1' : ''}`, async ({
      browser,
    }) => {
      const context = await browser.newContext({ viewport, reducedMotion: 'reduce', serviceWorkers: 'block' });
      await context.addInitScript((t) => localStorage.setItem('kneewall.theme', t), theme);
      const page = await context.newPage();
      for (const screen of [...screens, withFinding]) {
        await show(page, server.url, screen);
        const { violations } = await new AxeBuilder({ page })
          .options({ rules: { 'color-contrast-enhanced': { enabled: theme === 'sunlight' } } })
          .withTags([...asked[theme]])
          .analyze();
        const found = violations.map(
          (v) =>
            `${screen}: ${v.id}: ${v.nodes
              .map((n) => n.target.join(' '))
              .slice(0, 4)
              .join(' | ')}`,
        );
        expect(found).toEqual([]);
      }
      await context.close();
    });

for (const width of [320, 390])
  test(`nothing is wider than a screen of ${width}, and every target is 44 high`, async ({ browser }) => {
    const context = await browser.newContext({ viewport: { width, height: 700 }, serviceWorkers: 'block' });
    const page = await context.newPage();
    for (const screen of [...screens, withFinding]) {
      await show(page, server.url, screen);
      const over = await widerBy(page);
      expect(`${screen} is over by ${over}`).toBe(`${screen} is over by 0`);
      expect(await smallTargets(page)).toEqual([]);
    }
    await context.close();
  });

test('no trade is without its screen here', async ({ page }) => {
  await show(page, server.url, '/trades');
  const linked = await page
    .locator('main a[href*="#/trade/"]')
    .evaluateAll((links) => links.map((a) => a.getAttribute('href')?.split('#')[1]?.split('?')[0] ?? ''));
  expect(linked.length).toBeGreaterThan(9);
  expect([...new Set(linked)].filter((l) => !screens.some((s) => s === l))).toEqual([]);
});

test('with text at 200 % nothing is wider than the screen', async ({ browser }) => {
  const context = await browser.newContext({ viewport: { width: 640, height: 900 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  for (const screen of screens) {
    await show(page, server.url, screen);
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    const over = await widerBy(page);
    expect(`${screen} is over by ${over}`).toBe(`${screen} is over by 0`);
  }
  await context.close();
});

/** Controls that a thumb cannot hit: less than 44 high or wide. Links inside sentences are left out, as WCAG does. */
const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, select, textarea, summary, nav a, input:not([type=file])')]
      .filter((e) => e.offsetParent !== null && !e.classList.contains('skip'))
      // A box to tick is hit by its whole label.
      .map((e) => ({ e, box: ((e.matches('[type=checkbox]') && e.closest('label')) || e).getBoundingClientRect() }))
      .filter(({ box }) => box.height > 0 && (box.height < 43.5 || box.width < 43.5))
      .map(
        ({ e, box }) =>
          `${e.tagName} ${e.className} ${(e.textContent ?? '').slice(0, 20)} ${Math.round(box.width)}x${Math.round(box.height)}`,
      ),
  );

/** How far the page, or the part of it that scrolls, is wider than it may be. */
const widerBy = (page: Page): Promise<number> =>
  page.evaluate(() =>
    Math.max(
      ...[document.documentElement, document.querySelector('main')].map((e) => (e ? e.scrollWidth - e.clientWidth : 0)),
    ),
  );
