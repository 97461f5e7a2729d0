import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { PNG } from 'pngjs';
import { pngChunk } from '../../src/io/png-chunks';
import { patch, photoOf, SIZE } from '../photo/pictures';
import { expectNoFindings } from './axe';
import { choose, drawer, finishes, openAtOnce, sample } from './page';

test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openAtOnce(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

const form = () => drawer(page).locator('form.photo');
const meaning = () => form().locator('.photo-meaning');
const handle = (name: string) => form().getByRole('button', { name: new RegExp(`^${name}`) });
const open = (name: string, buffer: Buffer) =>
  form().locator('input[type=file]').first().setInputFiles({ name, mimeType: 'image/png', buffer });

const PLACE = 'taken at 47.3769 N 8.5417 E';

/** A photo as a PNG file that tells where it was taken, in words and as a camera does. */
function photoFile(): Buffer {
  const png = new PNG({ width: SIZE.width, height: SIZE.height });
  png.data = Buffer.from(photoOf({ noise: 0.01, sample: { materials: [patch('light skin')] } }));
  const plain = PNG.sync.write(png);
  const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  // After IHDR, which ends at byte 33.
  return Buffer.concat([
    plain.subarray(0, 33),
    pngChunk('tEXt', latin(`Comment\0${PLACE}`)),
    pngChunk('eXIf', latin('MM\0*\0\0\0\b\0\x01\x88\x25\0\x04\0\0\0\x01\0\0\0\x1a\0\0\0\0\0\0\0\0\0\0')),
    plain.subarray(33),
  ]);
}

test('a photo with a card becomes a finish: boxes by keys and by hand, colors, what is wrong with it', async () => {
  await sample(page, 'backsplash').click();
  await choose(page, 'Type one in');
  await choose(page, 'Photo');
  await expect(form()).toContainText('The photo stays on this device');
  await open('kitchen.png', Buffer.from('no picture'));
  await expect(meaning()).toContainText('no picture this page can read');

  await open('kitchen.png', photoFile());
  // The boxes begin a little beside card and sample of this photo: the card's box goes over its edge.
  await expect(meaning().locator('[data-flag]').first()).toBeVisible();
  const drag = async (name: string, x: number, y: number) => {
    const field = (await form().locator('.photo-field').boundingBox())!;
    const at = (await handle(name).boundingBox())!;
    await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2);
    await page.mouse.down();
    await page.mouse.move(field.x + (field.width * x) / SIZE.width, field.y + (field.height * y) / SIZE.height, {
      steps: 3,
    });
    await page.mouse.up();
  };
  await drag('Card, all', 50, 60);
  await drag('Sample, all', 170, 60);
  const corner = handle('Sample, corner 1');
  const before = await corner.getAttribute('aria-label');
  await corner.focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(corner).not.toHaveAttribute('aria-label', before!);
  await page.keyboard.press('Shift+ArrowLeft');
  await expect(corner).toHaveAttribute('aria-label', before!);

  await expect(meaning()).toContainText('by lamps a card mends', { ignoreCase: true });
  await form().getByLabel('Light', { exact: true }).selectOption('daylight');
  await expect(meaning()).toContainText('off by about 2.5');
  await expect(meaning()).toContainText('Nothing is wrong with the photo');
  // Light skin of Ohta's chart has Lab 66.2, 14.5, 17.7 under D65.
  await expect(meaning()).toContainText(/Lab 6[567]\.\d, 1\d\.\d, 1\d\.\d/);
  await expectNoFindings(page, 'form.photo');

  await choose(page, 'No card');
  await expect(meaning()).toContainText('Only what is sure is said');
  await expect(handle('Card')).toHaveCount(0);
  await choose(page, 'Gray 18%');
  await expect(meaning()).toContainText('off by about 2.5');
});

test('of the photo the project keeps numbers only', async () => {
  await form().getByLabel('Call it').fill('Shop tile');
  await form().getByRole('button', { name: 'Use it' }).click();
  await expect(finishes(page).getByRole('option', { selected: true })).toContainText('Shop tile');
  await page.keyboard.press('Escape');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  const text = await readFile(await download.path(), 'utf8');
  const own = JSON.parse(text).library.find(({ id }: { id: string }) => id === 'OWN-01');
  expect(own).toEqual({
    id: 'OWN-01',
    label: 'Shop tile, OWN-01',
    class: expect.any(String),
    gloss_gu: expect.any(Number),
    components: [
      {
        role: 'base',
        share: 1,
        color: { kind: 'lab', lab: expect.any(Array), illuminant: 'D65', observer_deg: 2 },
      },
    ],
    pattern: { kind: 'plain' },
    variation: 'V0',
    ...(own.piece_mm && { piece_mm: expect.any(Array) }),
    provenance: 'photo-with-card',
  });
  for (const trace of ['47.3769', 'Exif', 'GPS', 'kitchen.png', 'data:image', 'base64'])
    expect(text).not.toContain(trace);
});
