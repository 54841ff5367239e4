import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    // Nothing here is about speed, so no test fails for being slow; only one that hangs is ended.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    env: { TZ: 'UTC' },
    pool: 'forks',
    maxWorkers: 2,
  },
});
