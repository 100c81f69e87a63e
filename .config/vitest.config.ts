import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    setupFiles: ['tests/support/fixed-seed.ts'],
    // The rooms keep no state of their own, so test files may share one loaded copy of them.
    pool: 'threads',
    isolate: false,
    // Nothing else of weight runs beside the tests: every core takes part.
    maxWorkers: '100%',
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
