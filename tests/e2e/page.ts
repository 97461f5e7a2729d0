import {
  type Browser,
  type BrowserContextOptions,
  expect,
  type Locator,
  type Page,
  type Route,
} from '@playwright/test';
import { PNG } from 'pngjs';

/** Notices of the renderer library and of the test runner that are no fault of the page; by exact text. */
const ALLOWED_CONSOLE = [
  'THREE.Clock: This module has been deprecated. Please use THREE.Timer instead.',
  'Service Worker registration blocked by Playwright',
] as const;

export interface Watch {
  /** Errors and warnings on the console, and uncaught errors, apart from those allowed. */
  readonly problems: string[];
  /** Addresses asked for, other than data: and blob:. */
  readonly requests: string[];
}

/** Notes what the page complains about and what it asks for, from before its first line. */
export function watch(page: Page): Watch {
  const problems: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (message.type() !== 'error' && message.type() !== 'warning') return;
    if (!(ALLOWED_CONSOLE as readonly string[]).includes(message.text())) problems.push(message.text());
  });
  page.on('pageerror', (error) => problems.push(error.message));
  page.on('request', (request) => {
    if (!/^(data|blob):/.test(request.url())) requests.push(request.url());
  });
  return { problems, requests };
}

/** What a test needs of an opened page beyond the program itself; what nobody looks at is left out, as it takes most of the time. */
export interface Needs {
  /** The picture with every pattern and with sheen; else plain. In as many pixels as the screen has it is drawn for `sharpShot` only. */
  readonly pixels?: boolean;
  /** The picture in half as many pixels across and down as the screen has, as with all that follows it here; else in an eighth. */
  readonly picture?: boolean;
  /** Direct light in its finest quality, which `refined` waits for; else the page stops at complete findings until something is asked. */
  readonly fine?: boolean;
  /** What would help is searched for once nothing changes any more; else the page never comes to that. Includes `fine`. */
  readonly help?: boolean;
  /** No light is worked out: for panels and forms that show none. Findings never get complete. */
  readonly dark?: boolean;
}

/** Opens the page with the demo project in a context of its own and waits for its complete findings, or where it is dark for its samples. */
export async function openPage(
  browser: Browser,
  options: BrowserContextOptions = {},
  needs: Needs = {},
): Promise<Page> {
  const page = await openAtOnce(browser, options, needs);
  if (needs.dark) await expect(page.locator('[data-sample]').first()).toBeVisible();
  else await settled(page);
  return page;
}

/** The same without waiting for anything. */
export async function openAtOnce(browser: Browser, options: BrowserContextOptions, needs: Needs = {}): Promise<Page> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  await prepare(page, needs);
  await page.goto('./');
  return page;
}

/** Leaves out of a page what is not needed of it. To be said before it is opened. */
export async function prepare(page: Page, needs: Needs = {}): Promise<void> {
  await page.addInitScript(coarsen, needs.picture || needs.fine || needs.pixels ? FEW : FEWEST);
  if (!needs.pixels) {
    await page.addInitScript(leaveOutSheen);
    await page.addInitScript(bakePlain, PATTERN_WORKER.source);
  }
  if (needs.dark) await silence(page, LIGHT_WORKER);
  else if (!needs.help)
    await page.route(LIGHT_WORKER, (route) => shorten(route, needs.fine ? [neverRest] : [neverRest, neverRefine]));
}

/**
 * Workers that say nothing, all or some of them: no light is worked out, and the page is there at once. To be said before it is opened.
 * They are not even started: were their files answered by the test, every file of the page would pass through it.
 */
export async function silence(page: Page, workers: RegExp = /\.worker[^/]*\.js$/): Promise<void> {
  await page.addInitScript(startSilent, workers.source);
}

/** Runs in the page before anything else. */
function startSilent(workers: string): void {
  class Silent extends EventTarget {
    postMessage(): void {}
    terminate(): void {}
  }
  window.Worker = new Proxy(Worker, {
    construct: (Real, [file, options]) =>
      new RegExp(workers).test(String(file)) ? new Silent() : new Real(file, options),
  });
}

export const LIGHT_WORKER = /\/light\.worker[^/]*\.js$/;

const PATTERN_WORKER = /\/pattern\.worker[^/]*\.js$/;

/** Runs in the page before anything else: in the place of the worker that bakes patterns, every finish is of its first color all over. */
function bakePlain(workers: string): void {
  const plain = () => ({ width: 1, height: 1, width_m: 1, height_m: 1, data: Uint8Array.of(0, 0, 0, 128) });
  class Plain extends EventTarget {
    onmessage: ((event: MessageEvent) => void) | null = null;
    postMessage({ key }: { readonly key: string }): void {
      queueMicrotask(() => this.onmessage?.(new MessageEvent('message', { data: { key, texture: plain() } })));
    }
    terminate(): void {}
  }
  window.Worker = new Proxy(Worker, {
    construct: (Real, [file, options]) =>
      new RegExp(workers).test(String(file)) ? new Plain() : new Real(file, options),
  });
}

/** Pixels of the picture for each of the screen, across and down, where it is looked at. */
const FEW = 0.5;
/** The same where nobody looks, or only the place of what is pressed matters. */
const FEWEST = 0.125;

/** Runs in the page before anything else. */
function coarsen(density: number): void {
  Object.defineProperty(window, 'devicePixelRatio', { value: density, writable: true });
}

/** Runs in the page before anything else. Without sheen half of the shaders are not built, unless a test asks for it. */
function leaveOutSheen(): void {
  localStorage.setItem('upstand-preferences', localStorage.getItem('upstand-preferences') ?? '{"sheen":false}');
}

/** The picture in as many pixels as the screen has, from the next change of it on. */
export const sharpen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    Object.assign(window, { devicePixelRatio: 1 });
  });

/** The light worker without what nobody looks at; each part runs in it before anything else. */
async function shorten(route: Route, parts: readonly (() => void)[]): Promise<void> {
  const response = await route.fetch();
  await route.fulfill({
    response,
    body: `${parts.map((part) => `(${part})();`).join('\n')}\n${await response.text()}`,
  });
}

/** As if something changed again and again: the rest before it searches for what would help never ends. */
function neverRest(): void {
  const later = self.setTimeout;
  const never = (act: () => void, ms: number) => (ms >= 1000 ? 0 : later(act, ms));
  Object.assign(self, { setTimeout: never });
}

/** As if it slept from complete findings to the next message: every pause between two slices of work then waits for that. */
function neverRefine(): void {
  const sleeping: (() => void)[] = [];
  let options = 0;
  let complete = 0;
  const post = self.postMessage.bind(self);
  const told = (message: { kind: string; complete?: boolean }, ...rest: never[]) => {
    if (message.kind === 'readings' && message.complete) complete++;
    post(message, ...rest);
  };
  Object.assign(self, { postMessage: told });
  const postTo = MessagePort.prototype.postMessage;
  MessagePort.prototype.postMessage = function (this: MessagePort, ...message: Parameters<typeof postTo>) {
    const go = () => postTo.apply(this, message);
    if (options > 0 && complete >= options) sleeping.push(go);
    else go();
  } as typeof postTo;
  self.addEventListener('message', ({ data }) => {
    if (data.kind === 'show') options = data.options.length;
    complete = 0;
    for (const go of sleeping.splice(0)) go();
  });
}

export const findings = (page: Page): Locator => page.getByRole('region', { name: 'Findings', exact: true });
export const canvas = (page: Page): Locator => page.locator('section[aria-label="Picture"] canvas');
export const sentence = (page: Page): Locator => page.locator('.balance-sentence');
export const drawer = (page: Page): Locator => page.getByRole('dialog');
export const sample = (page: Page, surface: string): Locator => page.locator(`[data-surfaces~="${surface}"]`);
/** The finishes of an open drawer; plain menus in it have options of their own. */
export const finishes = (page: Page): Locator => page.getByRole('listbox', { name: 'Finishes for this surface' });
export const reading = (page: Page): Locator => page.getByRole('region', { name: /^Reading: / });
export const option = (page: Page, name: string): Locator => page.getByRole('radio', { name, exact: true });

/** Waits until the findings belong to the document and are complete. */
export const settled = (page: Page): Promise<void> => idle(page, 'section[aria-label="Findings"]', 180_000);

/** Waits until the picture's light has its full quality. */
export const refined = (page: Page): Promise<void> => idle(page, '.stage-picture', 180_000);

/** Looks twenty times a second: what one waits for by `expect` is looked at once a second only, after a while. */
async function idle(page: Page, selector: string, timeout: number): Promise<void> {
  const isIdle = (part: string) => document.querySelector(part)?.getAttribute('aria-busy') === 'false';
  await page.waitForFunction(isIdle, selector, { polling: 50, timeout });
}

/** Clicks a radio button of a row of choices: what one sees and hits is its label. */
export async function choose(page: Page, name: string): Promise<void> {
  await page.locator('.choice', { has: page.getByRole('radio', { name, exact: true }) }).click();
}

/** The names a row of choices offers, also where fonts are so wide that it became a menu. */
export async function namesOf(page: Page, label: string): Promise<string[]> {
  return (await choicesOf(page, label)).map(({ name }) => name);
}

/** The name of what is chosen in a row of choices or the menu in its place; null for none. */
export async function chosenOf(page: Page, label: string): Promise<string | null> {
  return (await choicesOf(page, label)).find(({ chosen }) => chosen)?.name ?? null;
}

function choicesOf(page: Page, label: string): Promise<{ name: string; chosen: boolean }[]> {
  return page
    .locator(`[aria-label="${label}"]`)
    .evaluate((row) =>
      row instanceof HTMLSelectElement
        ? [...row.options].map((one) => ({ name: one.text, chosen: one.selected }))
        : [...row.querySelectorAll('input')].map((one) => ({ name: one.ariaLabel!, chosen: one.checked })),
    );
}

export interface Shot {
  readonly width: number;
  readonly height: number;
  readonly bytes: Buffer;
  /** Corner of the picture on the page, CSS px. */
  readonly left: number;
  readonly top: number;
}

/** The picture as it stands on screen, without the rows over it. */
export async function shot(page: Page): Promise<Shot> {
  const show = (visibility: string) =>
    page.locator('.stage-foot').evaluate((foot: HTMLElement, value) => {
      foot.style.visibility = value;
    }, visibility);
  const box = (await canvas(page).boundingBox())!;
  const clip = {
    x: Math.ceil(box.x),
    y: Math.ceil(box.y),
    width: Math.floor(box.width),
    height: Math.floor(box.height),
  };
  await show('hidden');
  const png = PNG.sync.read(await page.screenshot({ clip, animations: 'disabled' }));
  await show('');
  return { width: png.width, height: png.height, bytes: png.data, left: clip.x, top: clip.y };
}

/**
 * The picture once it stays the same, drawn in as many pixels as the screen has; from the next change of it on it is drawn in few again:
 * light that comes in, and places that are read one by one, draw it many times, and where a place lies is no matter of pixels.
 */
export async function sharpShot(page: Page): Promise<Shot> {
  await canvas(page).evaluate(drawSharp);
  const seen = await stillShot(page);
  const drawn = await canvas(page).evaluate((element: HTMLCanvasElement) => element.width / element.clientWidth);
  expect(drawn).toBeCloseTo(1, 2);
  await page.evaluate((density) => Object.assign(window, { devicePixelRatio: density }), FEWEST);
  return seen;
}

/** Runs in the page: the picture is drawn anew when its size changes, and at rest otherwise. */
async function drawSharp(element: Element): Promise<void> {
  const { style } = element.parentElement!;
  const drawn = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  style.width = 'calc(100% - 1px)';
  await drawn();
  Object.assign(window, { devicePixelRatio: 1 });
  style.width = '100%';
  await drawn();
}

/** The picture once it stays the same from one look to the next. */
export async function stillShot(page: Page): Promise<Shot> {
  let last = await shot(page);
  await expect
    .poll(
      async () => {
        const next = await shot(page);
        const same = next.bytes.equals(last.bytes);
        last = next;
        return same;
      },
      { intervals: [100] },
    )
    .toBe(true);
  return last;
}

/** How many different colors the picture has, in steps of 8 of each channel. */
export function colorCount({ bytes }: Shot): number {
  const seen = new Set<number>();
  for (let i = 0; i < bytes.length; i += 4) {
    seen.add(((bytes[i]! >> 3) << 10) | ((bytes[i + 1]! >> 3) << 5) | (bytes[i + 2]! >> 3));
  }
  return seen.size;
}
