import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { type DistServer, serveDist } from './dist-server';
import { canvas, colorCount, finishes, option, sentence, settled, stillShot, watch } from './page';

// Served in a folder of an address, by a server that can be stopped: the program has to do without it from its second visit on.

test.describe.configure({ mode: 'serial' });

let server: DistServer;
let page: Page;
let watched: ReturnType<typeof watch>;

const more = () => page.getByRole('region', { name: 'More' });
const prompt = () => page.getByRole('region', { name: 'Newer version' });
const violations = () => page.evaluate(() => (window as unknown as { violations: string[] }).violations);

test.beforeAll(async ({ browser }) => {
  server = await serveDist();
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  page = await context.newPage();
  watched = watch(page);
  await page.addInitScript(() => {
    const found: string[] = [];
    Object.assign(window, { violations: found });
    // A picture of fewer pixels and without sheen is drawn sooner.
    localStorage.setItem('upstand-preferences', localStorage.getItem('upstand-preferences') ?? '{"sheen":false}');
    Object.defineProperty(window, 'devicePixelRatio', { value: 0.5, writable: true });
    document.addEventListener('securitypolicyviolation', (event) => {
      found.push(`${event.effectiveDirective} ${event.blockedURI}`);
    });
  });
  await page.goto(server.address);
});
test.afterAll(async () => {
  await page.context().close();
  await server.stop();
});

test('says once that it works offline, and under More that it does and which version it is', async () => {
  await expect(page.getByText('Works offline now.', { exact: true })).toBeAttached();
  const { asked } = server;
  // Nothing is fetched for later use before the picture's own code.
  expect(asked.indexOf('/shop/sw.js')).toBeGreaterThan(asked.findIndex((path) => path.includes('/Picture-')));
  await page.getByRole('button', { name: 'More' }).click();
  await expect(more()).toContainText('Works offline now.');
  await expect(more()).toContainText(/Version \d+\.\d+\.\d+-[0-9a-f]{7}\./);
  await page.keyboard.press('Escape');
});

test('with the server gone and the network cut: picture, findings, a file to save; no request leaves', async () => {
  await server.stop();
  await page.context().setOffline(true);
  const leaving: string[] = [];
  page.on('response', (response) => {
    if (/^http/.test(response.url()) && !response.fromServiceWorker()) leaving.push(response.url());
  });
  page.on('requestfailed', (request) => leaving.push(request.url()));
  await page.reload();
  await settled(page);
  await expect(sentence(page)).not.toBeEmpty();
  await expect(canvas(page)).toBeVisible();
  await expect.poll(async () => colorCount(await stillShot(page))).toBeGreaterThan(100);

  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  const saved = JSON.parse(readFileSync(await (await download).path(), 'utf8')) as { type: string };
  expect(saved.type).toBe('upstand-project');
  // Parts that had not been opened before are there, too.
  await page.locator('[data-sample=floor]').click();
  await expect(finishes(page).getByRole('option').first()).toBeVisible();
  await page.keyboard.press('Escape');
  expect(leaving).toEqual([]);
});

test('in use nothing goes against the policy of the page, and what is injected does not run', async () => {
  expect(await violations()).toEqual([]);
  expect(watched.problems).toEqual([]);
  const ran = await page.evaluate(async () => {
    const script = document.createElement('script');
    script.textContent = 'window.injected = "script"';
    const picture = document.createElement('img');
    picture.setAttribute('onerror', 'window.injected = "handler"');
    picture.src = 'data:image/png;base64,x';
    const frame = document.createElement('iframe');
    frame.src = './index.html';
    document.body.append(script, picture, frame);
    // What a test runs at once may evaluate text whatever the policy says.
    const evaluated = await new Promise((resolve) => {
      setTimeout(() => {
        try {
          resolve(new Function('return "evaluated"')());
        } catch {
          resolve(null);
        }
      });
    });
    const sent = await fetch('https://example.org/').then(
      () => 'sent',
      () => null,
    );
    await new Promise((resolve) => setTimeout(resolve, 200));
    for (const one of [script, picture, frame]) one.remove();
    return [(window as unknown as { injected?: string }).injected ?? null, evaluated, sent];
  });
  expect(ran).toEqual([null, null, null]);
  const refused = (await violations()).map((text) => text.split(' ')[0]);
  expect(new Set(refused)).toEqual(
    new Set(['script-src-elem', 'script-src-attr', 'script-src', 'connect-src', 'frame-src']),
  );
});

test('a newer version asks first: Later leaves everything as it is, Update now loads it', async () => {
  await page.context().setOffline(false);
  server.serveAs('a newer one');
  await server.resume();
  await page.evaluate(async () => {
    Object.assign(window, { session: 'this one' });
    await (await navigator.serviceWorker.getRegistration())!.update();
  });
  await expect(prompt()).toContainText('A newer version is ready.');
  await expectNoFindings(page, 'section[aria-label="Newer version"]');
  await prompt().getByRole('button', { name: 'Later' }).click();
  await expect(prompt()).toHaveCount(0);
  const session = () => page.evaluate(() => (window as unknown as { session?: string }).session ?? null);
  expect(await session()).toBe('this one');

  // What one did stays, in this browser.
  await page.getByRole('button', { name: 'More' }).click();
  await more().getByRole('button', { name: 'Copy this option' }).click();
  await expect(option(page, 'Third idea')).toBeVisible();

  await page.getByRole('button', { name: 'More' }).click();
  const loaded = page.waitForEvent('load');
  await more().getByRole('button', { name: 'Update now' }).click();
  await loaded;
  expect(await session()).toBe(null);
  await expect(option(page, 'Third idea')).toBeVisible();
  await expect(prompt()).toHaveCount(0);
  const scripts = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    return [registration?.waiting ?? null, navigator.serviceWorker.controller?.state];
  });
  expect(scripts).toEqual([null, 'activated']);
});
