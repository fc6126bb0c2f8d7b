import { defineConfig } from 'vitest/config';

/** Tests that start other programs: from a small process that takes five milliseconds, from one that holds every engine sixty. */
const STARTING = ['cli', 'demo', 'docs', 'faults', 'kill', 'outside'].map((folder) => `test/${folder}/**/*.test.ts`);
const TRUTH = 'test/samples/foreign/truth.test.ts';
const APART = [...STARTING, TRUTH];

export default defineConfig({
  test: {
    reporters: ['default', './test/outside/skip-reporter.ts'],
    setupFiles: ['./test/seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: 'forks',
    maxWorkers: 2,
    projects: [
      { extends: true, test: { name: 'apart', include: APART } },
      // No test here changes what another one finds, and loading the engines once a process saves a third of all the work.
      { extends: true, test: { name: 'together', include: ['test/**/*.test.ts'], exclude: APART, isolate: false } },
    ],
  },
});
