// What contact sheets do with the page: open, choose, press, take the picture, put pictures into a sheet.
import { writeFileSync } from 'node:fs';

/** Opens a project as a person does; false, with the reason, where the app refuses it. */
export async function openProject(page, name, project) {
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
export function choicesOf(page, label) {
  return page.evaluate((of) => {
    const select = document.querySelector(`select[aria-label="${of}"]`);
    if (select) return [...select.options].map((option) => option.text.trim());
    const radios = document.querySelectorAll(`[role=radiogroup][aria-label="${of}"] input`);
    return [...radios].map((radio) => radio.ariaLabel ?? radio.closest('label').textContent.trim());
  }, label);
}

export async function choose(page, label, name) {
  const select = page.locator(`select[aria-label="${label}"]`);
  if (await select.count()) await select.selectOption({ label: name });
  else {
    const row = page.locator(`[role=radiogroup][aria-label="${label}"]`);
    await row.locator('.choice', { has: page.getByRole('radio', { name, exact: true }) }).click();
  }
  await atRest(page);
}

/** Until the picture is what is asked for, at full quality. */
export async function atRest(page) {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await page.locator('.stage-picture[aria-busy="false"]').waitFor();
  await page.waitForTimeout(400);
}

/** The picture, as a data address; alone, or with the controls over it. */
export async function picture(page, { controls = false } = {}) {
  const { x, y, width, height } = await page.locator('.stage-fill canvas').boundingBox();
  const hide = (value) =>
    page.evaluate((opacity) => {
      for (const over of document.querySelectorAll('.stage-foot, .stage-tab, .stage-notes'))
        over.style.opacity = opacity;
    }, value);
  if (!controls) await hide('0');
  const bytes = await page.screenshot({ clip: { x, y, width, height }, animations: 'disabled' });
  await hide('');
  return `data:image/png;base64,${bytes.toString('base64')}`;
}

/** Makes the stage alone fill a part of the page, so that what is not looked at is not drawn. */
export async function stageAlone(page, { width, height }) {
  await page.evaluate(
    (size) => {
      const stage = document.querySelector('.stage');
      Object.assign(stage.style, { position: 'fixed', inset: '0 auto auto 0', padding: '0', zIndex: '1000', ...size });
      for (const over of document.querySelectorAll('.stage-foot, .stage-tab, .stage-notes')) over.style.opacity = '0';
    },
    { width: `${width}px`, height: `${height}px` },
  );
  await page.waitForFunction((wanted) => {
    const canvas = document.querySelector('.stage-fill canvas');
    return canvas && Math.abs(canvas.clientWidth - wanted) < 2;
  }, width);
}

/** Presses keys on the picture, each so many times: [['PageDown', 4], ['Shift+ArrowUp', 2]]. */
export async function press(page, keys) {
  for (const [key, times] of keys) {
    for (let n = 0; n < times; n++) {
      await page.evaluate((pressed) => {
        const shiftKey = pressed.startsWith('Shift+');
        const on = document.querySelector('.stage-fill canvas');
        on.dispatchEvent(new KeyboardEvent('keydown', { key: pressed.replace('Shift+', ''), shiftKey, bubbles: true }));
      }, key);
    }
  }
  await atRest(page);
}

/** Puts labeled cells, each of one or more pictures side by side, into a page of their own and keeps it as a picture. */
export async function writeSheet(page, path, title, cells, most, width) {
  const columns = Math.min(most, cells.length);
  if (cells.length === 0) return;
  const across = Math.max(...cells.map(({ images }) => images.length));
  const wide = across * (width + 4) - 4;
  const sheet = await page.context().newPage();
  await sheet.setViewportSize({ width: columns * (wide + 16) + 16, height: 400 });
  await sheet.setContent(`<!doctype html><style>
    body { margin: 16px; font: 15px/1.35 system-ui, sans-serif; background: #848484; color: #000 }
    h1 { margin: 0 0 12px; font-size: 22px }
    main { display: grid; grid-template-columns: repeat(${columns}, ${wide}px); gap: 16px }
    div { display: flex; gap: 4px }
    img { display: block; width: ${width}px; height: auto; align-self: stretch }
    figure { margin: 0; background: #f9f9f9 } figcaption { padding: 6px 8px }
  </style><h1></h1><main></main>`);
  await sheet.evaluate(
    async ({ title, cells }) => {
      document.querySelector('h1').textContent = title;
      for (const { label, images } of cells) {
        const figure = document.createElement('figure');
        const row = figure.appendChild(document.createElement('div'));
        for (const image of images) {
          const img = row.appendChild(document.createElement('img'));
          img.src = image;
          await img.decode();
        }
        figure.appendChild(document.createElement('figcaption')).textContent = label;
        document.querySelector('main').appendChild(figure);
      }
    },
    { title, cells },
  );
  writeFileSync(path, await sheet.screenshot({ fullPage: true }));
  await sheet.close();
  console.log(path);
}
