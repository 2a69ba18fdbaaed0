import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      '{project,engine,documents,server,cli,demos,bench,app}/{src,test}/**/*.test.{ts,tsx}',
      'validation/**/*.test.ts',
      'gates/**/*.test.ts',
    ],
    // Only to end what hangs: a busy machine takes several times as long. A hook may work a demo out for a whole file.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // Left to itself the runner keeps one core free, which is half of a small machine.
    maxWorkers: '100%',
  },
});
