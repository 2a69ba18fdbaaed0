import { browserPath } from './browser.mjs';
import { must, run, setUp, tool } from './setup.mjs';

/** Builds, then runs the browser tests. Without a browser: one clear line, and a failure only where one is required. */
setUp();
const browser = browserPath();
if (!browser) {
  console.error(
    'Browser tests not run: no Chromium found. Install Debian\'s package "chromium", or set CHROMIUM_PATH.',
  );
  process.exit(process.env.REQUIRE_BROWSER === '1' ? 1 : 0);
}
must(process.execPath, ['scripts/build.mjs']);
process.exit(
  run(
    process.execPath,
    [tool('@playwright/test/cli.js'), 'test', '--config', 'e2e/playwright.config.ts', ...process.argv.slice(2)],
    {
      CHROMIUM_PATH: browser,
    },
  ),
);
