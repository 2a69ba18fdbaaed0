import { must, run, setUp } from './setup.mjs';

/** Sets up, builds and serves the app with the demo loaded. PORT says where; a busy port ends with exit 2. */
setUp();
must(process.execPath, ['scripts/build.mjs']);
process.exit(run(process.execPath, ['cli/bin/kneewall.mjs', 'serve', '--port', process.env.PORT ?? '4173']));
