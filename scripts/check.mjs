import { run, setUp, tool } from './setup.mjs';

/** Everything that reads the code without running it: format and lint, types, dependency directions, dead code. */
setUp();
const native = tool('@typescript/native/bin/tsc');
const projects = [
  'project',
  'engine',
  'documents',
  'app',
  'server',
  'cli',
  'demos',
  'validation',
  'bench',
  'e2e',
  'tsconfig.tests.json',
];
const steps = [
  ['lint and format', [tool('@biomejs/biome/bin/biome'), 'ci', '.']],
  ...projects.map((p) => [`types of ${p}`, [native, '-p', p]]),
  [
    'dependency directions',
    [
      tool('dependency-cruiser/bin/dependency-cruise.mjs'),
      '--config',
      'dependency-cruiser.config.cjs',
      ...projects.slice(0, 10),
    ],
  ],
  ['dead code', [tool('knip/bin/knip.js'), '--no-progress']],
];
const failed = steps.filter(([name, args]) => {
  const code = run(process.execPath, args);
  console.log(`${code === 0 ? 'ok  ' : 'FAIL'} ${name}`);
  return code !== 0;
});
process.exit(failed.length === 0 ? 0 : 1);
