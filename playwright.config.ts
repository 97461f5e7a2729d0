import { defineConfig } from '@playwright/test';
import { BROWSER_LAUNCH } from './tests/browser-launch';

const port = Number(process.env.UPSTAND_TEST_PORT) || 4319;

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
    launchOptions: BROWSER_LAUNCH,
  },
  webServer: {
    command: `npx vite preview --port ${port} --strictPort`,
    port,
    reuseExistingServer: !process.env.CI,
    timeout: 60_000,
  },
});
