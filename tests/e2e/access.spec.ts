import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { choose, drawer, finishes, openPage, reading, sample } from './page';
import { smallTargets } from './small-targets';

// Rules of axe-core for WCAG 2.0 to 2.2, A and AA, and its best practices.

test.describe.configure({ mode: 'serial' });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, { reducedMotion: 'reduce' });
});
test.afterAll(() => page.context().close());

const SIZES = [
  { name: 'a desk', width: 1280, height: 800 },
  { name: 'a tablet held upright', width: 820, height: 1180 },
  { name: 'a phone', width: 390, height: 844 },
] as const;

for (const { name, width, height } of SIZES) {
  test(`axe finds nothing on ${name}: start, drawer, reading`, async () => {
    await page.setViewportSize({ width, height });
    await expectNoFindings(page);
    expect(await sidewaysScroll(page)).toBe(0);

    await sample(page, 'backsplash').click();
    await expect(drawer(page)).toBeVisible();
    await expectNoFindings(page);
    await page.keyboard.press('Escape');

    await page.getByRole('button', { name: 'Readings', exact: true }).click();
    await expect(reading(page)).toBeVisible();
    await expectNoFindings(page);
    await page.keyboard.press('Escape');
    await expect(reading(page)).toHaveCount(0);
  });
}

test('a phone shows the picture above the finishes one chooses from, and several of them', async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  await sample(page, 'backsplash').click();
  await expect(finishes(page).locator('[role=option]').nth(1)).toBeVisible();
  const picture = (await page.locator('.stage-picture').boundingBox())!;
  expect(picture.y).toBe(0);
  expect(picture.height).toBeGreaterThan(200);
  expect((await drawer(page).boundingBox())!.y).toBeGreaterThanOrEqual(picture.height - 1);
  const second = (await finishes(page).locator('[role=option]').nth(1).boundingBox())!;
  expect(second.y + second.height).toBeLessThanOrEqual(844);
  await expect(drawer(page).getByLabel('State')).toBeHidden();
  await drawer(page).getByRole('button', { name: 'Details' }).click();
  await expect(drawer(page).getByLabel('State')).toBeVisible();
  await page.keyboard.press('Escape');
});

test('axe finds nothing side by side, in the menu, in the form for a color', async () => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.keyboard.press('s');
  await expect(page.locator('.stage-halves')).toBeVisible();
  await page.getByRole('button', { name: 'More' }).click();
  await expectNoFindings(page);
  await page.keyboard.press('Escape');
  await page.keyboard.press('s');
  await sample(page, 'backsplash').click();
  await choose(page, 'Type one in');
  await expectNoFindings(page);
  await page.keyboard.press('Escape');
});

test('axe finds nothing in the dark theme', async () => {
  await page.getByRole('button', { name: 'More' }).click();
  await choose(page, 'Dark');
  await expectNoFindings(page);
  await page.keyboard.press('Escape');
  await sample(page, 'floor').click();
  await expectNoFindings(page);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'More' }).click();
  await choose(page, 'Light');
  await page.keyboard.press('Escape');
});

test('nothing moves for people who asked for less motion', async () => {
  const durations = await page.evaluate(() =>
    [...document.querySelectorAll('*')].flatMap((element) => {
      const { transitionDuration, animationDuration } = getComputedStyle(element);
      return `${transitionDuration}, ${animationDuration}`.split(', ').map(Number.parseFloat);
    }),
  );
  expect(Math.max(...durations)).toBe(0);
});

/** What Tab should reach: everything that can be operated, one of each row of radio buttons. */
const CONTROLS = [
  'button:not(:disabled)',
  'select:not(:disabled)',
  'input:not(:disabled, [type=file], [type=radio])',
  'input[type=radio]:checked',
  'summary',
  '[tabindex="0"]',
].join(', ');

interface Stop {
  readonly name: string;
  readonly ring: boolean;
}

/** Marks every control in sight, then tabs once round the page; the stops made, and the controls left out. */
async function tabRound(on: Page): Promise<{ stops: Stop[]; missed: string[] }> {
  await on.evaluate((controls) => {
    (document.activeElement as HTMLElement | null)?.blur();
    for (const element of document.querySelectorAll<HTMLElement>(controls)) {
      if (element.checkVisibility({ visibilityProperty: true })) element.dataset['toReach'] = '';
    }
  }, CONTROLS);
  const stops: Stop[] = [];
  let ends = 0;
  for (let presses = 0; presses < 150; presses++) {
    await on.keyboard.press('Tab');
    const stop = await on.evaluate(() => {
      const element = document.activeElement as HTMLElement | null;
      if (!element || element === document.body) return null;
      delete element.dataset['toReach'];
      // The ring of a radio button is on its label: the button itself lies unseen over it.
      const ringed = element.matches('.choice input') ? element.nextElementSibling! : element;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(ringed);
      const ring = (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow !== 'none';
      return { name: element.ariaLabel ?? element.textContent?.slice(0, 40) ?? element.tagName, ring };
    });
    // Past the last control the focus leaves the page once, then comes in again at the first.
    if (!stop && ++ends === 2) break;
    if (stop) stops.push(stop);
  }
  const missed = await on.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-to-reach]')].map((element) => {
      delete element.dataset['toReach'];
      return element.outerHTML.slice(0, 120);
    }),
  );
  return { stops, missed };
}

test('Tab reaches every control, and each shows that it has the focus', async () => {
  const start = await tabRound(page);
  expect(start.stops.length).toBeGreaterThan(25);
  expect(start.stops.filter(({ ring }) => !ring)).toEqual([]);
  expect(start.missed).toEqual([]);

  await page.getByRole('button', { name: 'Readings', exact: true }).click();
  const read = await tabRound(page);
  expect(read.stops.filter(({ ring }) => !ring)).toEqual([]);
  expect(read.missed).toEqual([]);
  await page.keyboard.press('Escape');
});

const sidewaysScroll = (on: Page) =>
  on.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Controls whose text is cut off, or that lie outside the page to the side. */
const cutOff = (on: Page) =>
  on.evaluate(() => {
    const wide = document.documentElement.clientWidth;
    const shown = [
      ...document.querySelectorAll<HTMLElement>('button, .choice-label, .check, .group-switch, h1, h2, p'),
    ];
    return shown
      .filter((element) => element.checkVisibility({ visibilityProperty: true }))
      .filter(
        (element) =>
          !element.closest('.hidden-visually, .bar-word, .bar-product, .bar-kept, .ledge-scroll, .fitting-ruler'),
      )
      .filter((element) => {
        const box = element.getBoundingClientRect();
        const isOutside = box.right > wide + 1 || box.left < -1;
        const isCut =
          getComputedStyle(element).overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1;
        return isOutside || isCut;
      })
      .map((element) => `${element.tagName} ${element.textContent?.slice(0, 40)}`);
  });

test('at 200 % the page neither cuts off a control nor scrolls sideways (WCAG 1.4.4, 1.4.10)', async () => {
  // Zoomed to 200 %, a window of 1280 x 800 is 640 x 400 CSS pixels.
  await page.setViewportSize({ width: 640, height: 400 });
  // Rows that fit themselves to their width do so in the frame after.
  await expect.poll(() => cutOff(page)).toEqual([]);
  expect(await sidewaysScroll(page)).toBe(0);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  await expect.poll(() => cutOff(page)).toEqual([]);
  expect(await sidewaysScroll(page)).toBe(0);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '';
  });
});

test('on a touch screen every control is 44 px wide and high: start, findings, drawer with filters and wishes, light', async () => {
  const hands = await page.context().newCDPSession(page);
  await hands.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 1 });
  await page.setViewportSize({ width: 820, height: 1180 });
  await expect.poll(() => page.evaluate(() => matchMedia('(pointer: coarse)').matches)).toBe(true);
  await expect.poll(() => smallTargets(page)).toEqual([]);

  await page.getByRole('button', { name: /^Show findings/ }).click();
  await page.getByRole('button', { name: 'Why', exact: true }).first().click();
  expect(await smallTargets(page)).toEqual([]);
  await page.getByRole('button', { name: /^Hide findings/ }).click();

  await sample(page, 'backsplash').click();
  await expect(finishes(page)).toBeVisible();
  expect(await smallTargets(page)).toEqual([]);
  for (const fold of ['filters', 'wishes']) {
    await page.locator(`[data-fold=${fold}]`).click();
    expect(await smallTargets(page)).toEqual([]);
    await page.locator(`[data-fold=${fold}]`).click();
  }
  await page.keyboard.press('Escape');

  await page.locator('[data-opens=light]').click();
  await expect(page.getByRole('region', { name: /^Light/ }).first()).toBeVisible();
  expect(await smallTargets(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await hands.send('Emulation.setTouchEmulationEnabled', { enabled: false });
});
