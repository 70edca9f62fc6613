import { defineConfig } from 'vitest/config';

// Run by tools/browser-tests.mjs, from the root of the repository: these need a browser and everything built.
export default defineConfig({
  test: {
    include: ['apps/web/e2e/*.test.ts'],
    silent: 'passed-only',
    // A file has a browser and a server of its own: more of them at once than this only wait for each other.
    maxWorkers: 2,
    // No test is timed: this only ends one that hangs, also on a slow machine.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
