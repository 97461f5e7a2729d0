import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';

const BROWSER_TESTS = ['tests/e2e/**', 'tests/bench/**'];
/** Files that put other modules in the place of ours, and so must not share them with others. */
const WITH_MODULES_OF_THEIR_OWN = ['tests/workers/light-desk-skies.test.ts'];

export default defineConfig({
  test: {
    setupFiles: ['tests/seed.ts'],
    environment: 'node',
    // Two even on two cores, where the usual rule would leave one idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'units',
          include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...BROWSER_TESTS, ...WITH_MODULES_OF_THEIR_OWN],
          // Half of the time went into loading the same modules for each file again.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'units with modules of their own', include: WITH_MODULES_OF_THEIR_OWN } },
    ],
  },
});
