import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { choose, openPage, option } from './page';
import { fontsIn, lettersOf, type PdfPage, readPdf } from './pdf';

test.describe.configure({ mode: 'serial' });

/** 8.5 by 11 inches and ISO 216 A4, pt; a printer's grid rounds the latter. */
const LETTER = [612, 792] as const;
const A4 = [595.28, 841.89] as const;

let page: Page;
let letter: readonly PdfPage[];
let file: Buffer;

const set = () => page.getByRole('dialog', { name: 'Handover set' });
const sheets = () => set().locator('.sheet');
const print = () => page.pdf({ preferCSSPageSize: true });

/** All pictures, a few pixels of each, as texts: that of the cover is there twice. */
const pictures = () =>
  set()
    .locator('img')
    .evaluateAll((all) =>
      all.map((one) => {
        const small = new OffscreenCanvas(16, 10).getContext('2d')!;
        small.drawImage(one as HTMLImageElement, 0, 0, 16, 10);
        return small.getImageData(0, 0, 16, 10).data.join();
      }),
    );

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' }, { fine: true });
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Handover set…' }).click();
});
test.afterAll(() => page.context().close());

test('is made by itself: every option by day and in the evening, with a way to stop and to go on', async () => {
  await expect(set().getByRole('status')).toContainText(/^Drawing .+ \(\d of 4\)$/);
  await set().getByRole('button', { name: 'Stop' }).click();
  await expect(set().getByRole('status')).toContainText('Stopped');
  await expect(set().getByRole('button', { name: 'Print' })).toBeEnabled();
  await set().getByRole('button', { name: 'Draw the rest' }).click();
  await expect(set()).toHaveAttribute('aria-busy', 'false');
  await expect(set().getByRole('img', { name: /^The kitchen as / })).toHaveCount(5);
  expect(new Set(await pictures()).size).toBe(4);
  await choose(page, 'Letter');
  await set().getByLabel('Prepared for').fill('The household at number 9');
  await expectNoFindings(page, '.handover');
  file = await print();
  letter = await readPdf(file);
});

test('prints each box on a page of the chosen paper, with every row whole and its number at the foot', async () => {
  const boxes = await sheets().evaluateAll((all) =>
    all.map((sheet) => ({
      title: sheet.querySelector('h3')!.textContent!,
      foot: sheet.querySelector('.sheet-foot')!.textContent!,
      rows: [...sheet.querySelectorAll<HTMLTableRowElement>('thead:not(.hidden-visually) tr, tbody tr')].map((row) =>
        [...row.cells].map((cell) => cell.textContent),
      ),
      texts: [...sheet.querySelectorAll('p, li, dd, dt, h4, figcaption')].map((one) => one.textContent),
    })),
  );
  expect(letter.length).toBe(boxes.length);
  letter.forEach((printed, i) => {
    expect([printed.width_pt, printed.height_pt]).toEqual(LETTER);
    const { title, foot, rows, texts } = boxes[i]!;
    for (const text of [title, foot, ...texts, ...rows.flat()]) expect(printed.letters).toContain(lettersOf(text));
    expect(foot).toContain(`page ${i + 1} of ${boxes.length}`);
  });
});

test('says what each page is for', () => {
  const page = (title: string) =>
    letter.find(({ letters }) => letters.includes(lettersOf(title)) && !isCover(letters))!;
  const isCover = (letters: string) => letters.includes('Optiontosign');
  const says = (title: string, ...texts: readonly string[]) => {
    for (const text of texts) expect(page(title).letters).toContain(lettersOf(text));
  };
  expect(letter[0]!.letters).toContain(lettersOf('Terrace kitchen'));
  expect(letter[0]!.letters).toContain(lettersOf('Option to sign Our floor'));
  expect(letter[0]!.letters).toContain(lettersOf('not frozen: draft'));
  expect(letter[0]!.letters).toContain(lettersOf('The household at number 9'));
  says('Brief and what stays', '4600 mm wide', 'it faces south-west', 'Evening, lamps of 3000 K', 'FL1');
  says('The room as Copied look', 'at the counter', 'seen from the place');
  says('Palette of Our floor, in proportion', 'FR1', 'Of the view');
  says('What was found in Our floor', 'Balance, day', 'Balance, evening', 'Most of what you see is cool or gray');
  says('What differs', 'Dark bluish-gray slate tiles', 'Light yellowish-brown birch boards');
  says('Samples to judge', 'By the window', 'look again');
  says('Before you order', 'Never cut or sand', 'Planning aid only');
  says('How sure this is', 'declared by the supplier', '± 1', 'Cannot tell');
  says('To sign', 'Draft, not for signature', 'Signature');
  says('Sample board, Our floor', 'FL1', 'Batch');
});

test('draws plan, walls and island at one scale, with every tag of the schedule and a bar on each', () => {
  const pages = letter.slice(1).filter(({ letters }) => letters.includes(lettersOf('Drawings with tags')));
  const texts = pages.flatMap((one) => one.texts.map(({ text }) => text.trim()));
  for (const id of ['CT1', 'FL1', 'FL1G', 'FR1', 'HW1', 'SK1', 'BS1', 'BS1G', 'TP1', 'AP1', 'WL1', 'CL1'])
    expect(texts).toContain(id);
  expect(pages[0]!.letters).toContain(lettersOf('Scale 1 : 30'));
  expect(pages[0]!.letters).toContain(lettersOf('the installer measures before anything is ordered'));
  for (const name of ['Plan', 'A Back wall', 'D Left wall', 'F Island, its working side'])
    expect(pages.some(({ letters }) => letters.includes(lettersOf(name)))).toBe(true);
  expect(texts.filter((text) => text === '1000 mm')).toHaveLength(7);
  // 4600 mm at 1 : 30 are 153 mm: the words of the whole stand over the middle of the wall.
  const whole = pages[0]!.texts.filter(({ text }) => text.trim() === '4600');
  const ends = ['620', '1050'].map((text) => pages[0]!.texts.filter((one) => one.text.trim() === text).at(-1)!);
  expect(whole.length).toBeGreaterThan(0);
  const middle = ({ x, width }: { readonly x: number; readonly width: number }) => x + width / 2;
  const apart_mm = ((middle(ends[1]!) - middle(ends[0]!)) / 72) * 25.4;
  expect(apart_mm).toBeCloseTo((4600 - 310 - 525) / 30, 0);
});

test('keeps text within the margins and has its fonts with it', () => {
  const margin = (18 / 25.4) * 72;
  for (const { texts, width_pt, height_pt } of letter) {
    for (const { text, x, y, width } of texts) {
      expect(x, text).toBeGreaterThanOrEqual(margin - 1);
      expect(x + width, text).toBeLessThanOrEqual(width_pt - margin + 1);
      expect(y, text).toBeGreaterThan(0);
      expect(y, text).toBeLessThan(height_pt);
    }
  }
  const { described, embedded } = fontsIn(file);
  expect(described).toBeGreaterThan(0);
  expect(embedded).toBe(described);
});

for (const paper of ['Letter', 'A4']) {
  test(`clips nothing on ${paper}: pieces, pictures and blocks lie inside their page, no heading stands alone`, async () => {
    await choose(page, paper);
    await page.emulateMedia({ media: 'print' });
    const faults = await sheets().evaluateAll((all) =>
      all.flatMap((sheet) => {
        const title = sheet.querySelector('h3')!.textContent;
        const room = sheet.querySelector('.sheet-content')!.getBoundingClientRect();
        const inside = [...sheet.querySelectorAll('.sheet-content *')].flatMap((one) => {
          const box = one.getBoundingClientRect();
          if (box.width === 0 || one.closest('thead.hidden-visually')) return [];
          const isIn =
            box.left > room.left - 1 &&
            box.right < room.right + 1 &&
            box.top > room.top - 1 &&
            box.bottom < room.bottom + 1;
          return isIn ? [] : [`${title}: ${one.tagName} ${one.className} sticks out`];
        });
        const alone = [...sheet.querySelectorAll('.sheet-body > :last-child > h4:only-child')];
        return [...inside, ...alone.map((one) => `${title}: ${one.textContent} alone`)];
      }),
    );
    await page.emulateMedia({ media: null });
    expect(faults).toEqual([]);
  });
}

test('reads in gray: every text has 4.5 times the contrast by luminance (WCAG 2.2, 1.4.3) and no hue', async () => {
  const found = await sheets().evaluateAll((all) => {
    const channels = (color: string) => color.match(/[\d.]+/g)!.map(Number);
    const luminance = (color: string) => {
      const [r = 0, g = 0, b = 0] = channels(color).map((one) => {
        const share = one / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = (one: Element | null): string => {
      if (!one) return 'rgb(255, 255, 255)';
      const { backgroundColor } = getComputedStyle(one);
      return channels(backgroundColor)[3] === 0 ? ground(one.parentElement) : backgroundColor;
    };
    const texts = all.flatMap((sheet) =>
      [...sheet.querySelectorAll('*')].filter((one) =>
        [...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent!.trim() !== ''),
      ),
    );
    return texts.map((one) => {
      const { color } = getComputedStyle(one);
      const [light, dark] = [luminance(color), luminance(ground(one))].sort((a, b) => b - a);
      return {
        text: one.textContent!,
        contrast: (light! + 0.05) / (dark! + 0.05),
        hues: new Set(channels(color)).size,
      };
    });
  });
  expect(found.length).toBeGreaterThan(200);
  expect(found.filter(({ contrast }) => contrast < 4.5)).toEqual([]);
  expect(found.filter(({ hues }) => hues > 1)).toEqual([]);
});

test('one page only is one page, on A4 and on Letter', async () => {
  await set().getByLabel('One page only').check();
  for (const [paper, size] of [
    ['A4', A4],
    ['Letter', LETTER],
  ] as const) {
    await choose(page, paper);
    const pages = await readPdf(await print());
    expect(pages.length).toBe(1);
    expect(pages[0]!.width_pt).toBeCloseTo(size[0], 0);
    expect(pages[0]!.height_pt).toBeCloseTo(size[1], 0);
    for (const text of ['Terrace kitchen: Our floor', 'DEMO-PT-01', 'Planning aid only', 'page 1 of 1']) {
      expect(pages[0]!.letters).toContain(lettersOf(text));
    }
  }
});

test('closed, the page is as it was: option and light, only the name to undo, the focus back', async () => {
  await page.keyboard.press('Escape');
  await expect(set()).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'More' })).toBeFocused();
  await expect(page.locator('.screen')).not.toHaveAttribute('inert');
  await expect(option(page, 'Our floor')).toBeChecked();
  await expect(page.getByRole('radio', { name: /^Day/ })).toBeChecked();
  const undo = page.getByRole('banner').getByRole('button', { name: /^Undo/ });
  await undo.click();
  await expect(undo).toBeDisabled();
});
