import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { type Browser, chromium, type Page } from 'playwright-core';
import { createServer, type ViteDevServer } from 'vite';
import { BROWSER_LAUNCH } from '../browser-launch';
import type { Lab } from './page/main';

declare global {
  interface Window {
    lab: Lab;
    heldGpuObjects: Record<string, number>;
  }
}

const PAGE_FOLDER = fileURLToPath(new URL('./page', import.meta.url));
const PROJECT_FOLDER = fileURLToPath(new URL('../..', import.meta.url));

export interface PicturePage {
  readonly page: Page;
  readonly problems: string[];
  close(): Promise<void>;
}

export interface PictureLab extends PicturePage {
  /** Another page in the same browser, whose graphics card lacks some extensions. */
  openWithout(extensions: readonly string[]): Promise<PicturePage>;
}

/** Runs in the page before anything else: counts what is made and freed, and hides extensions. */
function countGpuObjects(without: readonly string[]): void {
  const held: Record<string, number> = {};
  const context = WebGL2RenderingContext.prototype;
  const count = (make: string, free: string, name: string): void => {
    const methods = context as unknown as Record<string, (...args: unknown[]) => unknown>;
    const [made, freed] = [methods[make]!, methods[free]!];
    methods[make] = function (...args) {
      held[name] = (held[name] ?? 0) + 1;
      return made.apply(this, args);
    };
    methods[free] = function (...args) {
      if (args[0]) held[name] = (held[name] ?? 0) - 1;
      return freed.apply(this, args);
    };
  };
  count('createTexture', 'deleteTexture', 'textures');
  count('createBuffer', 'deleteBuffer', 'buffers');
  count('createFramebuffer', 'deleteFramebuffer', 'framebuffers');
  count('createRenderbuffer', 'deleteRenderbuffer', 'renderbuffers');
  count('createVertexArray', 'deleteVertexArray', 'vertexArrays');
  count('createProgram', 'deleteProgram', 'programs');
  const getExtension = context.getExtension as (this: WebGL2RenderingContext, name: string) => unknown;
  context.getExtension = function (this: WebGL2RenderingContext, name: string) {
    return without.includes(name) ? null : getExtension.call(this, name);
  } as typeof context.getExtension;
  Object.assign(window, { heldGpuObjects: held });
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
  const browser: Browser = await chromium.launch(BROWSER_LAUNCH);
  const address = server.resolvedUrls!.local[0]!;
  return {
    ...(await openPage(browser, address, [])),
    openWithout: (extensions) => openPage(browser, address, extensions),
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

async function openPage(browser: Browser, address: string, without: readonly string[]): Promise<PicturePage> {
  const page = await browser.newPage({ viewport: { width: 1300, height: 820 } });
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') problems.push(message.text());
  });
  await page.addInitScript(countGpuObjects, without);
  await page.goto(address);
  await page.waitForFunction(() => window.lab !== undefined, undefined, { timeout: 60_000 });
  return { page, problems, close: () => page.close() };
}
