import { existsSync } from 'node:fs';
import { defineConfig } from '@playwright/test';

/** Never downloaded: the browser named, Debian's, or Playwright's own where it was put by hand. */
const executablePath = [process.env.CHROMIUM_PATH, '/usr/bin/chromium'].find(
  (path) => path !== undefined && existsSync(path),
);

export default defineConfig({
  testDir: './src',
  testMatch: '*.spec.ts',
  // A file at a time on each core: every file has a server of its own.
  workers: '100%',
  fullyParallel: false,
  timeout: 480_000,
  expect: { timeout: 90_000 },
  reporter: [['list']],
  outputDir: './test-results',
  use: {
    browserName: 'chromium',
    headless: true,
    actionTimeout: 20_000,
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
