import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      '{project,engine,documents,server,cli,demos,bench,app}/{src,test}/**/*.test.{ts,tsx}',
      'validation/**/*.test.ts',
      'gates/**/*.test.ts',
    ],
    testTimeout: 60_000,
    // Where a demo is worked out once for all tests of a file, that is done in a hook.
    hookTimeout: 60_000,
    // Left to itself the runner keeps one core free, which is half of a small machine.
    maxWorkers: '100%',
  },
});
