import { existsSync } from 'node:fs';

/** Where the browser for the browser tests is, or undefined. */
export const browserPath = () =>
  [process.env.CHROMIUM_PATH, '/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(
    (path) => path && existsSync(path),
  );
