import { availableParallelism } from 'node:os';
import { configDefaults, defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const BROWSER_TESTS = ['tests/e2e/**', 'tests/bench/**'];
/**
 * Files that work long, which a process full of others slows down, and one that puts other modules in the place of ours: each in a
 * process of its own, the longest first. Of the many short files most of the time went into loading the same modules again and again.
 */
const ALONE = [
  'view/in-browser',
  'workers/light-desk',
  'workers/light-desk-skies',
  'physics/pattern-shares',
  'physics/pattern-geometry',
  'photo/shares',
  'physics/pattern-far',
  'kitchen/views',
  'kitchen/layouts',
  'physics/exported-kitchen',
  'workers/stand-desk',
  'kitchen/details',
  'parity/kernel-parity',
  'photo/recover',
  'physics/two-renderers',
  'parity/kernel-module',
  'physics/pattern-repeat',
  'physics/sheen-mirrored',
].map((file) => `tests/${file}.test.ts`);

/** Those alone in the order given, whatever their size: a long one begun last would leave a core idle. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const place = ALONE.findIndex((file) => moduleId.endsWith(file));
      return place < 0 ? ALONE.length : place;
    };
    // Stable: the rest stays as the runner orders it.
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}

export default defineConfig({
  test: {
    setupFiles: ['tests/seed.ts'],
    environment: 'node',
    // Two even on two cores, where the usual rule would leave one idle.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    sequence: { sequencer: LongestFirst },
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
