import { expect, type Page } from '@playwright/test';

/** Every screen of the app, by the part of the address after `#`. */
export const screens = [
  '/',
  '/first',
  '/trades',
  '/trade/climate',
  '/trade/loads',
  '/trade/equipment',
  '/trade/air',
  '/trade/condensate',
  '/trade/lineset',
  '/trade/access',
  '/trade/circuit',
  '/trade/offgrid',
  '/trade/materials',
  '/trade/paperwork',
  '/trade/schedule',
  '/trade/commissioning',
  '/project',
  '/buy',
  '/do',
  '/read',
] as const;

/** Goes to a screen and waits until a plan stands on it. */
export async function show(page: Page, url: string, screen: string): Promise<void> {
  await page.goto(`${url}/#${screen}`);
  await settled(page);
}

/** Waits until nothing is opening, computing or being saved. */
export async function settled(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.locator('.computing')).toHaveCount(0);
  await expect(page.locator('.save.not-saved')).toHaveCount(0);
}

/** Types into a field and leaves it, which is what keeps it. */
export async function enter(page: Page, label: string, text: string): Promise<void> {
  const box = page.getByRole('textbox', { name: label, exact: true });
  await box.fill(text);
  await box.press('Enter');
}

/** What the page holds in its store, read past the app: the number of acts, none where nothing was ever stored. */
export const actsStored = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done, fail) => {
        const asked = indexedDB.open('kneewall');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const db = asked.result;
          if (!db.objectStoreNames.contains('log')) return done(0);
          const counted = db.transaction('log').objectStore('log').count();
          counted.onsuccess = () => {
            db.close();
            done(counted.result);
          };
        };
      }),
  );
