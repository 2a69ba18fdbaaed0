import { must, setUp, tool } from './setup.mjs';

/** Builds the app and the command line tool. */
setUp();
must(process.execPath, ['scripts/build-cli.mjs']);
must(process.execPath, [tool('vite/bin/vite.js'), 'build', 'app']);
