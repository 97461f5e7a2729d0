import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { chromium, type Page } from 'playwright-core';
import { createServer } from 'vite';
import { BROWSER_LAUNCH } from '../browser-launch';
import type { PictureBench } from './page/main';
import { report } from './timing';

// The picture of the demo kitchen at 1280 x 800 in software WebGL: frames at rest and moving, and what 500 swaps of finishes leave behind.

const PAGE = fileURLToPath(new URL('./page', import.meta.url));
const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const SWAPS = Number(process.env['UPSTAND_SWAPS'] ?? 500);

const server = await createServer({
  root: PAGE,
  configFile: false,
  logLevel: 'error',
  plugins: [react()],
  cacheDir: `${PROJECT}/node_modules/.vite-picture-bench`,
  worker: { format: 'es' },
  server: {
    port: 0,
    host: '127.0.0.1',
    fs: { allow: [PROJECT, fileURLToPath(new URL('../../node_modules', import.meta.url))], strict: false },
  },
});
await server.listen();
const browser = await chromium.launch({ ...BROWSER_LAUNCH, args: [...BROWSER_LAUNCH.args, '--js-flags=--expose-gc'] });
const processes = await browser.newBrowserCDPSession();
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
page.on('pageerror', (error) => console.log(`  page: ${error.message}`));
await page.addInitScript(countGpuObjects);
const opened = performance.now();
await page.goto(server.resolvedUrls!.local[0]!);
await page.waitForFunction(() => window.pictureBench && document.querySelector('canvas'), undefined, {
  timeout: 120_000,
});
console.log(`  picture there after ${Math.round(performance.now() - opened)} ms, modules served one by one`);

const call = <K extends keyof PictureBench>(name: K, ...args: Parameters<PictureBench[K]>) =>
  page.evaluate(([n, a]) => (window.pictureBench[n as K] as (...all: unknown[]) => unknown)(...(a as unknown[])), [
    name,
    args,
  ] as const) as ReturnType<PictureBench[K]>;

for (const [setting, viewpoint, sheen] of [
  ['day', 0, true],
  ['day', 0, false],
  ['evening', 0, true],
  ['evening', 1, true],
  ['evening', 3, true],
] as const) {
  await call('look', setting, viewpoint, sheen);
  const frame = `${setting}, viewpoint ${viewpoint + 1}, sheen ${sheen ? 'on' : 'off'}`;
  await call('sharpFrames', 1);
  const { drawn, result: times } = await drawn_ms(() => call('sharpFrames', 8));
  report(`frame at rest, ${frame}`, 150, times);
  console.log(`  ${Math.round(drawn / times.length)} ms of processor time of the process that draws`);
}
const gaps = await call('flight', 0);
if (gaps.length > 0) report('between frames of a flight', 33, gaps);

console.log(`  before swaps: ${await heldBy(page)}`);
for (let part = 0; part < 5; part++) {
  await call('swap', SWAPS / 5);
  console.log(`  after ${((part + 1) * SWAPS) / 5} swaps: ${await heldBy(page)}`);
}
await browser.close();
await server.close();

/** Processor time of the process that draws, ms: unlike the time on the clock it is little longer on a busy machine. */
async function drawn_ms<T>(work: () => Promise<T>): Promise<{ drawn: number; result: T }> {
  const spent = async (): Promise<number> => {
    const { processInfo } = await processes.send('SystemInfo.getProcessInfo');
    return processInfo.reduce((sum, { type, cpuTime }) => (type === 'GPU' ? sum + 1000 * cpuTime : sum), 0);
  };
  const before = await spent();
  const result = await work();
  return { drawn: (await spent()) - before, result };
}

/** Objects on the graphics card, and the heap of the page without its workers after a collection. */
async function heldBy(of: Page): Promise<string> {
  const session = await of.context().newCDPSession(of);
  await session.send('HeapProfiler.collectGarbage');
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  const held = await of.evaluate(() => (window as unknown as { held: Record<string, number> }).held);
  return `${(usedSize / 2 ** 20).toFixed(1)} MB of heap; ${Object.entries(held)
    .map(([name, count]) => `${count} ${name}`)
    .join(', ')}`;
}

/** Runs in the page before anything else. */
function countGpuObjects(): void {
  const held: Record<string, number> = {};
  const methods = WebGL2RenderingContext.prototype as unknown as Record<string, (...args: unknown[]) => unknown>;
  for (const name of ['Texture', 'Buffer', 'Framebuffer', 'Renderbuffer', 'VertexArray', 'Program']) {
    const [made, freed] = [methods[`create${name}`]!, methods[`delete${name}`]!];
    methods[`create${name}`] = function (...args) {
      held[name] = (held[name] ?? 0) + 1;
      return made.apply(this, args);
    };
    methods[`delete${name}`] = function (...args) {
      if (args[0]) held[name] = (held[name] ?? 0) - 1;
      return freed.apply(this, args);
    };
  }
  Object.assign(window, { held });
}
