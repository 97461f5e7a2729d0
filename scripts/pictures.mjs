// npm run pictures: takes the README's pictures from the built app into docs/.
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { root } from './ensure-installed.mjs';
import { findBrowser } from './find-browser.mjs';

const PICTURES = [
  { name: 'desktop', width: 1280, height: 800 },
  { name: 'side-by-side', width: 1280, height: 800, keys: ['s'], setting: 'Evening' },
  { name: 'tablet', width: 820, height: 1180, setting: 'Evening', touch: true },
];

const server = await preview({ root, preview: { port: 4399, host: 'localhost' } });
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--force-color-profile=srgb'],
});
for (const { name, width, height, keys = [], setting, touch = false } of PICTURES) {
  const page = await browser.newPage({ viewport: { width, height }, hasTouch: touch });
  await page.goto(server.resolvedUrls.local[0]);
  const refined = page.locator('.stage-picture[aria-busy="false"]');
  await refined.waitFor({ timeout: 90_000 });
  if (setting) await page.locator('.choice:has(input)', { hasText: setting }).first().click();
  for (const key of keys) await page.keyboard.press(key);
  await page.mouse.move(width - 8, height - 8);
  // The rows over the picture fade while the hand rests.
  await page.waitForTimeout(12_000);
  await page.screenshot({ path: join(root, 'docs', `${name}.png`) });
  await page.close();
}
await browser.close();
await server.close();
