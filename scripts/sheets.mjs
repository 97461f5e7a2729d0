// npm run sheets: contact sheets of the room and its finishes as PNG in out/sheets/, taken from the built app.
//   npm run sheets                                 everything
//   npm run sheets -- scenes settings              some of: scenes, classes, settings, stand
//   npm run sheets -- classes --only wood,tile     only what is called so (scene, finish class, setting)
//   npm run sheets -- --width 420 --settings 2     cells of another width; so many settings a scene (3)
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { buildIfNeeded } from './build-if-needed.mjs';
import { ensureInstalled, fail, root } from './ensure-installed.mjs';
import { findBrowser } from './find-browser.mjs';

const KINDS = ['scenes', 'classes', 'settings', 'stand'];
/** Where a finish of a class is laid to be looked at. Grout lies between tiles and has no sheet. */
const SURFACES_OF = {
  paint: ['wall'],
  laminate: ['base-fronts', 'wall-fronts'],
  wood: ['floor'],
  vinyl: ['floor'],
  porcelain: ['floor'],
  glazed: ['backsplash'],
  glass: ['backsplash'],
  stone: ['counter', 'island-counter'],
  engineered: ['counter', 'island-counter'],
  'solid surface': ['counter', 'island-counter'],
  metal: ['appliance'],
};
const LONGEST_WAIT_MS = 180_000;

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string' },
    width: { type: 'string', default: '480' },
    settings: { type: 'string', default: '3' },
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
  if (kinds.includes('scenes')) await sheetsOfScenes(page);
  if (kinds.includes('classes')) await sheetsOfClasses(page);
  if (kinds.includes('settings')) await sheetsOfSettings(page);
  if (kinds.includes('stand')) await sheetOfStand(page);
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
    const isOpen = await openProject(page, name, { ...demo, kitchen: scene.kitchen ?? scene });
    if (!isOpen) continue;
    const rows = [];
    for (const setting of (await choicesOf(page, 'Light setting')).slice(0, perScene)) {
      await choose(page, 'Light setting', setting);
      rows.push(...(await allViewpoints(page, (view) => `${view}, ${setting}`)));
    }
    await write(page, `scene-${name}`, `Kitchen: ${name}`, rows, (await choicesOf(page, 'Viewpoint')).length);
  }
}

/** Per class of finish: each finish of it laid on the same surface, same view. */
async function sheetsOfClasses(page) {
  const classes = Object.keys(SURFACES_OF).filter(isWanted);
  for (const one of classes) {
    const finishes = demo.library.filter((finish) => finish.class === one);
    const surfaces = SURFACES_OF[one];
    const cells = [];
    for (const finish of finishes) {
      const options = demo.options.slice(0, 1).map((option) => ({
        ...option,
        name: finish.id,
        scheme: laid(option.scheme, surfaces, finish.id),
      }));
      if (!(await openProject(page, `${one}-${finish.id}`, { ...demo, options }))) continue;
      cells.push({ label: `${finish.id} on ${surfaces.join(' and ')}: ${finish.label}`, image: await picture(page) });
    }
    await write(page, `class-${one}`, `Finishes: ${one}`, cells, 3);
  }
}

/** The scheme with a finish on surfaces. */
function laid(scheme, surfaces, finish) {
  const changed = surfaces.map((surface) => [surface, { ...scheme[surface], finish }]);
  return { ...scheme, ...Object.fromEntries(changed) };
}

/** Per setting of the demo project: all viewpoints. */
async function sheetsOfSettings(page) {
  if (!(await openProject(page, 'demo', demo))) return;
  for (const setting of (await choicesOf(page, 'Light setting')).filter(isWanted)) {
    await choose(page, 'Light setting', setting);
    const cells = await allViewpoints(page, (view) => view);
    await write(page, `setting-${setting}`, `Light: ${setting}`, cells, 3);
  }
}

/** The sample stand in each setting, where the app has one. */
async function sheetOfStand(page) {
  if (!(await openProject(page, 'demo', demo))) return;
  const stand = page.locator('.choice', { has: page.getByRole('radio', { name: 'Sample stand' }) });
  if ((await stand.count()) === 0) return console.log('There is no sample stand in this build.');
  await stand.click();
  const cells = [];
  for (const setting of await choicesOf(page, 'Light setting')) {
    await choose(page, 'Light setting', setting);
    cells.push({ label: setting, image: await picture(page) });
  }
  await write(page, 'stand', 'Sample stand', cells, 2);
  await page.locator('.choice', { has: page.getByRole('radio', { name: 'Room', exact: true }) }).click();
}

async function allViewpoints(page, labelOf) {
  const cells = [];
  for (const view of await choicesOf(page, 'Viewpoint')) {
    await choose(page, 'Viewpoint', view);
    cells.push({ label: labelOf(view), image: await picture(page) });
  }
  return cells;
}

/** Opens a project as a person does; false, with the reason, where the app refuses it. */
async function openProject(page, name, project) {
  await page
    .locator('input[type=file][accept*=json]')
    .first()
    .setInputFiles({
      name: `${name}.project.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(project)),
    });
  await page
    .waitForFunction(
      () => document.querySelector('[role=alert]') || document.querySelector('.stage-picture[aria-busy="true"]'),
      null,
      { timeout: 10_000 },
    )
    .catch(() => {});
  const refused = page.getByRole('alert').first();
  if (await refused.isVisible()) {
    console.error(`${name} was left out: ${await refused.textContent()}`);
    await refused.getByRole('button', { name: 'Dismiss' }).click();
    return false;
  }
  await atRest(page);
  return true;
}

/** The names of a row of choices, whether it stands as buttons or as a menu. */
function choicesOf(page, label) {
  return page.evaluate((of) => {
    const select = document.querySelector(`select[aria-label="${of}"]`);
    if (select) return [...select.options].map((option) => option.text.trim());
    const radios = document.querySelectorAll(`[role=radiogroup][aria-label="${of}"] input`);
    return [...radios].map((radio) => radio.ariaLabel ?? radio.closest('label').textContent.trim());
  }, label);
}

async function choose(page, label, name) {
  const select = page.locator(`select[aria-label="${label}"]`);
  if (await select.count()) await select.selectOption({ label: name });
  else {
    const row = page.locator(`[role=radiogroup][aria-label="${label}"]`);
    await row.locator('.choice', { has: page.getByRole('radio', { name, exact: true }) }).click();
  }
  await atRest(page);
}

/** Until the picture is what is asked for, at full quality. */
async function atRest(page) {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await page.locator('.stage-picture[aria-busy="false"]').waitFor();
  await page.waitForTimeout(400);
}

/** The picture alone, as a data address. */
async function picture(page) {
  const { x, y, width, height } = await page.locator('.stage-fill canvas').boundingBox();
  const hide = (value) =>
    page.evaluate((opacity) => {
      for (const over of document.querySelectorAll('.stage-foot, .stage-tab, .stage-notes'))
        over.style.opacity = opacity;
    }, value);
  await hide('0');
  const bytes = await page.screenshot({ clip: { x, y, width, height }, animations: 'disabled' });
  await hide('');
  return `data:image/png;base64,${bytes.toString('base64')}`;
}

/** Puts labeled cells into a page of their own and keeps it as a picture. */
async function write(page, name, title, cells, most) {
  const columns = Math.min(most, cells.length);
  if (cells.length === 0) return;
  const sheet = await page.context().newPage();
  await sheet.setViewportSize({ width: columns * (cell.width + 12) + 12, height: 400 });
  await sheet.setContent(`<!doctype html><style>
    body { margin: 12px; font: 13px/1.3 system-ui, sans-serif; background: #848484; color: #000 }
    h1 { margin: 0 0 8px; font-size: 18px }
    main { display: grid; grid-template-columns: repeat(${columns}, ${cell.width}px); gap: 12px }
    img { display: block; width: ${cell.width}px; }
    figure { margin: 0 } figcaption { padding: 4px; background: #f9f9f9 }
  </style><h1></h1><main></main>`);
  await sheet.evaluate(
    async ({ title, cells }) => {
      document.querySelector('h1').textContent = title;
      for (const { label, image } of cells) {
        const figure = document.createElement('figure');
        const img = figure.appendChild(document.createElement('img'));
        img.src = image;
        await img.decode();
        figure.appendChild(document.createElement('figcaption')).textContent = label;
        document.querySelector('main').appendChild(figure);
      }
    },
    { title, cells },
  );
  const path = join(out, `${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}.png`);
  writeFileSync(path, await sheet.screenshot({ fullPage: true }));
  await sheet.close();
  console.log(path);
}
