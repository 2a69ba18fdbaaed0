import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './setup.mjs';

/** Builds the command line tool into cli/dist, so that `npx kneewall` starts at once. Run by npm after installing. */
const { build } = await import('esbuild');
if (existsSync(join(root, 'cli/src/main.ts')))
  await build({
    entryPoints: { kneewall: join(root, 'cli/src/main.ts'), studyWorker: join(root, 'cli/src/studyWorker.ts') },
    outdir: join(root, 'cli/dist'),
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    // Puts constants of kernels in their places: a bundle would have their loops look them up each time.
    minifySyntax: true,
    // The solver and the printer of papers find their own files beside themselves.
    external: ['fastify', '@fastify/static', 'highs', 'pdfmake', 'svg-to-pdfkit', 'dejavu-fonts-ttf'],
    logLevel: 'warning',
  });
