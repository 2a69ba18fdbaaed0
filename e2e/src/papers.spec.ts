import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { planSet, printPlanSet } from '@kneewall/documents/planSet';
import { evaluate } from '@kneewall/engine';
import { emptyProject } from '@kneewall/project';
import { expect, test } from '@playwright/test';
import { type AppServer, startAppServer } from './appServer.ts';
import { show } from './screens.ts';

let server: AppServer;
test.beforeAll(async () => {
  server = await startAppServer();
});
test.afterAll(() => server.kill());

const font = (name: string) => readFileSync(createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));

test('the plan set made in the browser is the one made in Node, to the last byte', async ({ page }) => {
  await show(page, server.url, '/project');
  await page.getByRole('button', { name: 'New project' }).click();
  await show(page, server.url, '/project');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Make the plan set' }).click(),
  ]);
  const { plan } = evaluate(emptyProject, {}, { units: 'us' });
  const here = await printPlanSet(planSet({ plan, project: emptyProject, units: 'us' }), {
    normal: font('DejaVuSansCondensed'),
    bold: font('DejaVuSansCondensed-Bold'),
  });
  expect(Buffer.compare(readFileSync(await download.path()), Buffer.from(here))).toBe(0);
  await expect(page.getByRole('status').filter({ hasText: 'Print it at 100 %' })).toBeVisible();
});
