import { defineConfig } from 'vitest/config';

// Run by tools/browser-tests.mjs, from the root of the repository: these need a browser and everything built.
export default defineConfig({
  test: {
    include: ['apps/web/e2e/*.test.ts'],
    silent: 'passed-only',
    // No test is timed: this only ends one that hangs, also on a slow machine.
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
