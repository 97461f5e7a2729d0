// npm run sheets: contact sheets of the room and its finishes as PNG in out/sheets/, taken from the built app.
//   npm run sheets                                 everything
//   npm run sheets -- scenes settings              some of: scenes, classes, settings, stand
//   npm run sheets -- classes --only wood,tile     only what is called so (scene, finish class, setting)
//   npm run sheets -- --width 420 --settings 2     cells of another width; so many settings a scene (4)
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { buildIfNeeded } from './build-if-needed.mjs';
import { sheetsOfClasses } from './class-sheets.mjs';
import { ensureInstalled, fail, root } from './ensure-installed.mjs';
import { findBrowser } from './find-browser.mjs';
import { atRest, choicesOf, choose, openProject, picture, writeSheet } from './sheet-page.mjs';

const KINDS = ['scenes', 'classes', 'settings', 'stand'];
const LONGEST_WAIT_MS = 180_000;
const STAND_WIDTH = 880;
/** The page kitchens are looked at on: larger than that of finishes, so that joinery can be judged. */
const ROOMY = { width: 1440, height: 1000 };

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string' },
    width: { type: 'string', default: '640' },
    settings: { type: 'string', default: '4' },
    help: { type: 'boolean', short: 'h' },
  },
});
const kinds = positionals.length > 0 ? positionals : KINDS;
const unknown = kinds.filter((kind) => !KINDS.includes(kind));
const cell = { width: Number(values.width) };
const perScene = Number(values.settings);
if (values.help || unknown.length > 0 || !(cell.width >= 120) || !(perScene >= 1)) {
  const says = readFileSync(new URL(import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line.startsWith('//'));
  fail(says.map((line) => line.slice(3)).join('\n'));
}
const only = values.only?.split(',').map((word) => word.trim().toLowerCase());
const isWanted = (name) => !only || only.some((word) => name.toLowerCase().includes(word));

ensureInstalled();
buildIfNeeded();
const out = join(root, 'out', 'sheets');
mkdirSync(out, { recursive: true });
const demo = JSON.parse(readFileSync(join(root, 'demo-data', 'terrace.project.json'), 'utf8'));

const SCHEME = `scheme "${demo.options.at(-1).name}" (finishes are invented)`;

const server = await preview({ root, preview: { port: 4398, host: 'localhost' }, logLevel: 'warn' });
const browser = await chromium.launch({
  executablePath: await findBrowser(),
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--force-color-profile=srgb'],
});
try {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(LONGEST_WAIT_MS);
  await page.goto(server.resolvedUrls.local[0]);
  await atRest(page);
  const usual = page.viewportSize();
  await page.setViewportSize(ROOMY);
  if (kinds.includes('scenes')) await sheetsOfScenes(page);
  if (kinds.includes('settings')) await sheetsOfSettings(page);
  await page.setViewportSize(usual);
  if (kinds.includes('stand')) await sheetOfStand(page);
  if (kinds.includes('classes'))
    await sheetsOfClasses(page, demo, isWanted, (name) => join(out, `class-${nameOf(name)}.png`));
} finally {
  await browser.close();
  await server.close();
}

/** Per scene of scenes/: its viewpoints across, settings down. */
async function sheetsOfScenes(page) {
  for (const file of readdirSync(join(root, 'scenes')).filter((name) => name.endsWith('.json'))) {
    const name = basename(file, '.json');
    if (!isWanted(name)) continue;
    const scene = JSON.parse(readFileSync(join(root, 'scenes', file), 'utf8'));
    const isOpen = await openProject(page, name, { ...demo, kitchen: furnished(scene) });
    if (!isOpen) continue;
    const rows = [];
    for (const setting of (await choicesOf(page, 'Light setting')).slice(0, perScene)) {
      await choose(page, 'Light setting', setting);
      rows.push(...(await allViewpoints(page, (view) => `${view}, ${setting}`)));
    }
    await write(page, `scene-${name}`, `${scene.name}, ${SCHEME}`, rows, (await choicesOf(page, 'Viewpoint')).length);
  }
}

/** As it is shown: lamps over an island, which the plain one has none of, are those of the demo; a few things on the counters. */
function furnished(scene) {
  const lacks = scene.island && !scene.fixtures.some(({ kind }) => kind === 'pendant');
  return { ...scene, objects: true, ...(lacks ? { fixtures: demo.kitchen.fixtures } : {}) };
}

/** Per setting of the demo project: all viewpoints. */
async function sheetsOfSettings(page) {
  if (!(await openProject(page, 'demo', demo))) return;
  for (const setting of (await choicesOf(page, 'Light setting')).filter(isWanted)) {
    await choose(page, 'Light setting', setting);
    const cells = await allViewpoints(page, (view) => view);
    await write(page, `setting-${setting}`, `${setting}: ${demo.kitchen.name}, ${SCHEME}`, cells, 3);
  }
}

/** The sample stand in each setting, where the app has one. */
async function sheetOfStand(page) {
  if (!(await openProject(page, 'demo', demo))) return;
  const stand = page.locator('.choice', { has: page.getByRole('radio', { name: 'Sample stand' }) });
  if ((await stand.count()) === 0) return console.log('There is no sample stand in this build.');
  await stand.click();
  await atRest(page);
  const cells = [{ label: 'As it comes up, with its controls', images: [await picture(page, { controls: true })] }];
  for (const setting of await choicesOf(page, 'Light setting')) {
    await choose(page, 'Light setting', setting);
    cells.push({ label: setting, images: [await picture(page)] });
  }
  await writeSheet(page, join(out, 'stand.png'), 'Sample stand', cells, 2, STAND_WIDTH);
  await page.locator('.choice', { has: page.getByRole('radio', { name: 'Room', exact: true }) }).click();
}

async function allViewpoints(page, labelOf) {
  const cells = [];
  for (const view of await choicesOf(page, 'Viewpoint')) {
    await choose(page, 'Viewpoint', view);
    cells.push({ label: labelOf(view), images: [await picture(page)] });
  }
  return cells;
}

function nameOf(text) {
  return text.toLowerCase().replace(/[^a-z0-9]+/g, '-');
}

function write(page, name, title, cells, most) {
  return writeSheet(page, join(out, `${nameOf(name)}.png`), title, cells, most, cell.width);
}
