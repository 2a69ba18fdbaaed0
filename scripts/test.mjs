import { run, setUp, tool } from './setup.mjs';

/** Sets up and runs every test: units and gates first, then the browser. */
setUp();
const units = run(process.execPath, [tool('vitest/vitest.mjs'), 'run']);
const browser = run(process.execPath, ['scripts/e2e.mjs']);
process.exit(units === 0 && browser === 0 ? 0 : 1);
