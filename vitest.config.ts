import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';

const BROWSER_TESTS = ['tests/e2e/**', 'tests/bench/**'];
/**
 * Files that work long, which a process full of others slows down, and one that puts other modules in the place of ours: each in a
 * process of its own. Of the many short files most of the time went into loading the same modules again and again.
 */
const ALONE = [
  'view/*',
  'workers/*',
  'parity/*',
  'physics/pattern-*',
  'physics/{exported-kitchen,identities,sheen-kitchen,sheen-mirrored,two-renderers}',
  'kitchen/{details,layouts,parameters,random-openings,views}',
  'photo/{flags,recover,shares}',
].map((files) => `tests/${files}.test.ts`);

export default defineConfig({
  test: {
    setupFiles: ['tests/seed.ts'],
    environment: 'node',
    // Two even on two cores, where the usual rule would leave one idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      { extends: true, test: { name: 'alone', include: ALONE } },
      {
        extends: true,
        test: {
          name: 'together',
          include: ['src/**/*.test.ts', 'tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, ...BROWSER_TESTS, ...ALONE],
          isolate: false,
        },
      },
    ],
  },
});
