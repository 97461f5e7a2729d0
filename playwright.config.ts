import { defineConfig } from '@playwright/test';
import { BROWSER_LAUNCH, PAGES_LAUNCH } from './tests/browser-launch';

const port = Number(process.env.UPSTAND_TEST_PORT) || 4319;

/** Files that look at what the picture shows, pixel by pixel. */
const PICTURES = /\/(bad-input|lamps|looking|offline|open|options|pixels|room-light|seen-by|stand)\.spec\.ts$/;

export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results',
  timeout: 240_000,
  expect: { timeout: 60_000 },
  // A page works out its light on one core: two fill two. More would only share them.
  workers: 2,
  reporter: [['list'], ['json', { outputFile: 'out/browser.json' }]],
  use: {
    baseURL: `http://localhost:${port}/`,
    viewport: { width: 1280, height: 800 },
    // Whoever wants the program kept for use without a network allows it.
    serviceWorkers: 'block',
  },
  projects: [
    { name: 'pictures', testMatch: PICTURES, use: { launchOptions: BROWSER_LAUNCH } },
    { name: 'pages', testIgnore: PICTURES, use: { launchOptions: PAGES_LAUNCH } },
  ],
  webServer: {
    command: `npx vite preview --port ${port} --strictPort`,
    port,
    reuseExistingServer: !process.env.CI,
    timeout: 60_000,
  },
});
