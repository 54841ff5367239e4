import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Tests that read, count and compare. */
const pure = ['test/core/**/*.test.{ts,tsx}', 'test/{outputs,outside,classroom,layouts,packs}/**/*.test.{ts,tsx}', 'test/proof-table.test.ts'];

/** Minutes long: run with BOOKFELLOW_WHOLE=1. */
const long = process.env['BOOKFELLOW_WHOLE'] === '1' ? [] : ['test/browser/kept-safe.test.ts'];

const shared = {
  // Nothing here is about speed, so no test fails for being slow; only one that hangs is ended.
  testTimeout: 240_000,
  hookTimeout: 240_000,
  env: { TZ: 'UTC' },
  pool: /** @type {const} */ ('forks'),
};

// Browsers without a window now and then draw no frame for half a minute when two work at once, and a test that waits for one is tried again; the report names it.
// One process holds the modules for all of its files: to read them anew for each took a minute and more. No test may leave a module changed.
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    maxWorkers: 2,
    projects: [
      { test: { ...shared, name: 'reckoning', include: pure, isolate: false } },
      { test: { ...shared, name: 'building', include: ['test/**/*.test.{ts,tsx}'], exclude: [...pure, ...long], isolate: false, retry: 1 } },
    ],
  },
});
