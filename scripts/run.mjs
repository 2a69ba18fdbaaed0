import { join } from 'node:path';
import { root, run, setUp, tool } from './setup.mjs';

/** Runs a TypeScript program of the checkout: `node scripts/run.mjs FILE [ARGS]`. */
setUp();
const [file, ...args] = process.argv.slice(2);
process.exit(
  run(process.execPath, ['--import', `file://${tool('tsx/dist/loader.mjs')}`, join(root, file ?? ''), ...args]),
);
