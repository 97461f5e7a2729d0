import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { type Browser, chromium, type Page } from 'playwright-core';
import { createServer, type ViteDevServer } from 'vite';
import type { Lab } from './page/main';

declare global {
  interface Window {
    lab: Lab;
  }
}

const PAGE_FOLDER = fileURLToPath(new URL('./page', import.meta.url));
const PROJECT_FOLDER = fileURLToPath(new URL('../..', import.meta.url));

export interface PictureLab {
  readonly page: Page;
  readonly problems: string[];
  close(): Promise<void>;
}

/** Opens the picture's test page in a browser with software WebGL. */
export async function openPictureLab(): Promise<PictureLab> {
  const server: ViteDevServer = await createServer({
    root: PAGE_FOLDER,
    configFile: false,
    logLevel: 'error',
    plugins: [react()],
    cacheDir: `${PROJECT_FOLDER}/node_modules/.vite-picture-lab`,
    server: { port: 0, host: '127.0.0.1', fs: { allow: [PROJECT_FOLDER] } },
  });
  await server.listen();
  const executablePath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
  const browser: Browser = await chromium.launch({
    executablePath,
    args: [
      '--no-sandbox',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-quic',
    ],
  });
  const page = await browser.newPage({ viewport: { width: 1300, height: 820 } });
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') problems.push(message.text());
  });
  await page.goto(server.resolvedUrls!.local[0]!);
  await page.waitForFunction(() => window.lab !== undefined, undefined, { timeout: 60_000 });
  return {
    page,
    problems,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}
