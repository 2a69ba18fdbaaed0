import { join } from 'node:path';
import { root, run, setUp } from './setup.mjs';

/** Benchmarks, bundled as the command line tool and the app are: what is timed is what people run. */
setUp();
const { build } = await import('esbuild');
const out = join(root, 'bench/dist/bench.mjs');
await build({
  entryPoints: [join(root, 'bench/src/main.ts')],
  outfile: out,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  minifySyntax: true,
  // What loads a file that lies beside it cannot be bundled.
  external: ['epanet-js', 'highs', 'psychrolib', 'pdfmake', 'svg-to-pdfkit'],
  logLevel: 'warning',
});
process.exit(run(process.execPath, [out, ...process.argv.slice(2)]));
