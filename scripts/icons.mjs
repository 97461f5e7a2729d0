// node scripts/icons.mjs: draws the icons of the installed program from public/icon.svg; run by hand when that changes.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { root } from './ensure-installed.mjs';
import { findBrowser } from './find-browser.mjs';

/** `inset`: share of the side kept free, as a maskable icon may be cut to a circle of 80 % of it (W3C manifest, icon masks). */
const ICONS = [
  { name: 'icon-180', side: 180, inset: 0 },
  { name: 'icon-192', side: 192, inset: 0 },
  { name: 'icon-512', side: 512, inset: 0 },
  { name: 'icon-maskable-192', side: 192, inset: 0.12 },
  { name: 'icon-maskable-512', side: 512, inset: 0.12 },
];

const svg = readFileSync(join(root, 'public', 'icon.svg'), 'utf8');
const ground = /<rect[^>]*fill="([^"]+)"/.exec(svg)[1];
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--force-color-profile=srgb'],
});
const page = await browser.newPage();
for (const { name, side, inset } of ICONS) {
  await page.setViewportSize({ width: side, height: side });
  await page.setContent(
    `<style>html{background:${ground}}body{margin:${inset * side}px}svg{display:block;width:${side * (1 - 2 * inset)}px}</style>${svg}`,
  );
  await page.screenshot({ path: join(root, 'public', `${name}.png`) });
}
await browser.close();
