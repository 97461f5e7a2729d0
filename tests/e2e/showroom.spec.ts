import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { choose, drawer, LIGHT_WORKER, sample, silence } from './page';

// The time stands still unless it is moved on: three minutes of waiting take none. Nothing of it looks at light.

test.describe.configure({ mode: 'serial' });

const NAME = 'Harbor Street showroom';
/** What a customer types: nowhere to be found afterwards. */
const TYPED = 'Zebrafinch kitchen';

let page: Page;

const warning = () => page.getByRole('alertdialog', { name: 'Still there?' });
const setup = () => page.getByRole('dialog', { name: 'Showroom mode' });
const bar = () => page.getByRole('banner');
const back = () => page.getByRole('button', { name: 'Bring back what was here' });
const undo = () => bar().getByRole('button', { name: /^Undo/ });
const tile = () => sample(page, 'backsplash');
const TYPED_ON = new RegExp(TYPED);

test.beforeAll(async ({ browser }) => {
  const context = await browser.newContext({ reducedMotion: 'reduce' });
  page = await context.newPage();
  await silence(page, LIGHT_WORKER);
  await page.clock.install({ time: new Date('2026-03-02T10:00:00') });
  await page.goto('./');
});
test.afterAll(() => page.context().close());

test('staff set it up once: what is asked for, what is refused, axe finds nothing', async () => {
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Showroom…' }).click();
  await expect(setup()).toContainText('There is no password');
  await expect(setup()).toContainText('white card');
  await expectNoFindings(page);
  const begin = setup().getByRole('button', { name: 'Start showroom mode' });
  await setup().getByLabel('Starts afresh after').fill('900');
  await expect(begin).toBeDisabled();
  await setup().getByLabel('Starts afresh after').fill('3');
  await setup().getByLabel('Finishes of this project').uncheck();
  await expect(setup().getByRole('alert')).toContainText('Choose at least one');
  await expect(begin).toBeDisabled();
  await setup().getByLabel('Finishes of this project').check();
  await setup().getByLabel('Fill the screen').uncheck();
  await setup().getByLabel('Let customers type in colors').check();
  await setup().getByLabel('Name of the showroom').fill(NAME);
  await begin.click();
  await expect(page.getByRole('heading', { name: `Showroom: ${NAME}` })).toBeVisible();
});

test('nothing to open, to save or to manage is there; targets are 44 px with a mouse, too', async () => {
  for (const name of ['Open', 'Save', 'More']) {
    await expect(bar().getByRole('button', { name, exact: true })).toHaveCount(0);
  }
  await expect(page.locator('input[type=file]')).toHaveCount(0);
  await expectNoFindings(page);
  await tile().click();
  await expect(drawer(page)).toBeVisible();
  await expect(drawer(page).getByLabel('State')).toHaveCount(0);
  await expectNoFindings(page);
  await choose(page, 'Type one in');
  await expect(page.getByRole('radio', { name: 'Photo', exact: true })).toHaveCount(0);
  await page.keyboard.press('Escape');
  const low = await bar()
    .getByRole('button')
    .evaluateAll((all) => all.map((one) => one.getBoundingClientRect()).filter(({ height }) => height < 44).length);
  expect(low).toBe(0);
});

/** Types a color in and lays it on the backsplash: it gets the typed name. */
async function layOwn(): Promise<void> {
  await tile().click();
  await choose(page, 'Type one in');
  await page.getByLabel('L*, a*, b* (', { exact: false }).fill('70, 2, 8');
  await page.getByLabel('Call it').fill(TYPED);
  await page.getByRole('button', { name: 'Use it' }).click();
  await expect(undo()).toBeEnabled();
  await page.keyboard.press('Escape');
  await expect(tile()).toHaveAccessibleName(TYPED_ON);
}

test('the list a customer takes home: showroom and day, code, price and delivery, what to heed, and a code to scan', async () => {
  await layOwn();
  await bar().getByRole('button', { name: 'List' }).click();
  const list = page.getByRole('dialog', { name: /^What you chose/ });
  await expect(list.getByText(`${NAME}, March 2, 2026`)).toBeVisible();
  await expect(list.getByRole('row', { name: /Backsplash/ })).toContainText(TYPED);
  await expect(list.getByRole('columnheader')).toHaveText([
    'Surface',
    'Finish',
    'Code',
    'Price',
    'Availability',
    'Lead time',
  ]);
  await expect(list.getByText('A screen is not a sample')).toBeVisible();
  await expect(list.getByRole('img', { name: 'The link as a QR code' })).toBeVisible();
  await expect(list.getByText('Scan the code')).toBeVisible();
  await expectNoFindings(page);
  await list.getByRole('button', { name: 'Close' }).click();
});

test('without a touch it warns, goes on when asked to, and else starts afresh', async () => {
  await page.clock.fastForward('02:29');
  await expect(warning()).toHaveCount(0);
  await page.clock.fastForward('00:02');
  await expect(warning()).toContainText(/Starts afresh in (29|30|28) s/);
  await expectNoFindings(page);
  await expect(warning().getByRole('button', { name: 'Go on' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(warning()).toHaveCount(0);
  await expect(tile()).toHaveAccessibleName(TYPED_ON);

  await page.clock.fastForward('02:31');
  await page.keyboard.press('Escape');
  await expect(warning()).toHaveCount(0);
  await page.clock.fastForward('02:31');
  await expect(warning()).toBeVisible();
  await page.clock.fastForward('00:30');
  await expect(warning()).toHaveCount(0);
  await expect(tile()).not.toHaveAccessibleName(TYPED_ON);
  await expect(undo()).toBeDisabled();
});

test('what was there can be brought back for a minute, and then is gone for good', async () => {
  await back().click();
  await expect(tile()).toHaveAccessibleName(TYPED_ON);
  await expect(undo()).toBeEnabled();
  await bar().getByRole('button', { name: 'Start over' }).click();
  await expect(tile()).not.toHaveAccessibleName(TYPED_ON);
  await expect(back()).toBeVisible();
  await page.clock.fastForward('01:01');
  await expect(back()).toHaveCount(0);
  // The next customer's first change puts an end to it, too.
  await layOwn();
  await bar().getByRole('button', { name: 'Start over' }).click();
  await expect(back()).toBeVisible();
  await layOwn();
  await expect(back()).toHaveCount(0);
  await bar().getByRole('button', { name: 'Start over' }).click();
  await page.clock.fastForward('01:01');
});

/** Everything the page keeps in the browser, as one text. */
const kept = () =>
  page.evaluate(async () => {
    const wait = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const texts = [JSON.stringify({ ...localStorage }), JSON.stringify({ ...sessionStorage }), location.href];
    for (const { name } of await indexedDB.databases()) {
      const database = await wait(indexedDB.open(name!));
      for (const table of database.objectStoreNames) {
        const store = database.transaction(table).objectStore(table);
        texts.push(table, JSON.stringify(await wait(store.getAll())));
      }
      database.close();
    }
    for (const name of await caches.keys()) {
      for (const request of await (await caches.open(name)).keys()) texts.push(request.url);
    }
    return texts.join('\n');
  });

test('nothing of a customer is kept anywhere, and the mode outlasts a restart', async () => {
  await layOwn();
  await bar().getByRole('button', { name: 'Start over' }).click();
  const all = await kept();
  expect(all).toContain(NAME);
  expect(all).not.toContain(TYPED);
  await page.reload();
  await expect(page.getByRole('heading', { name: `Showroom: ${NAME}` })).toBeVisible();
  await expect(tile()).not.toHaveAccessibleName(TYPED_ON);
  expect(await kept()).not.toContain(TYPED);
});

test('staff leave by holding a button for three seconds, by pointer or by key', async () => {
  await bar().getByRole('button', { name: 'Staff' }).click();
  const leave = page.getByRole('button', { name: /^Leave showroom mode/ });
  await expectNoFindings(page);
  await leave.focus();
  await page.keyboard.down(' ');
  await page.clock.runFor(2500);
  await page.keyboard.up(' ');
  await page.clock.runFor(2000);
  await expect(leave).toBeVisible();
  await expect(page.getByText('That was too short to leave.')).toBeVisible();

  await leave.hover();
  await page.mouse.down();
  const loaded = page.waitForEvent('load');
  await page.clock.runFor(3100);
  await loaded;
  await page.mouse.up();
  await expect(bar().getByRole('button', { name: 'Save', exact: true })).toBeVisible();
  await expect(tile()).not.toHaveAccessibleName(TYPED_ON);
});

test('who cannot hold leaves by two answers more; tapping again and again leaves nothing', async () => {
  await page.evaluate(() => localStorage.setItem('upstand-showroom', 'on'));
  await page.reload();
  await bar().getByRole('button', { name: 'Staff' }).click();
  const leave = page.getByRole('button', { name: /^Leave showroom mode/ });
  const other = page.getByRole('button', { name: 'Leave without holding…' });
  // As assistive technology sends it: a click without a pointer.
  await leave.evaluate((button: HTMLElement) => button.click());
  for (let tap = 0; tap < 3; tap++) await leave.click();
  await expect(page.getByText('That was too short to leave.')).toBeVisible();
  await other.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Stay' })).toBeFocused();
  await expectNoFindings(page);
  await page.keyboard.press('Enter');
  await expect(other).toHaveCount(0);
  await leave.click();
  await other.click();
  const loaded = page.waitForEvent('load');
  await page.getByRole('button', { name: 'Leave now' }).click();
  await loaded;
  await expect(bar().getByRole('button', { name: 'Save', exact: true })).toBeVisible();
});

test('a kept note that cannot be read does not let a customer out, and staff can leave', async () => {
  await page.evaluate(async () => {
    await new Promise<void>((resolve) => {
      const opening = indexedDB.open('upstand');
      opening.onsuccess = () => {
        const change = opening.result.transaction('notes', 'readwrite');
        change.objectStore('notes').put({ name: 'half of it' }, 'showroom');
        change.oncomplete = () => {
          opening.result.close();
          resolve();
        };
      };
    });
    localStorage.setItem('upstand-showroom', 'on');
  });
  await page.reload();
  await expect(page.getByRole('heading', { name: 'The showroom cannot begin yet.' })).toBeVisible();
  await expect(page.getByText('cannot be read')).toBeVisible();
  await expectNoFindings(page);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'The showroom cannot begin yet.' })).toBeVisible();
});

test('what the browser has lost of it is told, and the mode is off', async () => {
  await page.evaluate(async () => {
    await new Promise<void>((resolve) => {
      const opening = indexedDB.open('upstand');
      opening.onsuccess = () => {
        const change = opening.result.transaction('notes', 'readwrite');
        change.objectStore('notes').delete('showroom');
        change.oncomplete = () => {
          opening.result.close();
          resolve();
        };
      };
    });
    localStorage.setItem('upstand-showroom', 'on');
  });
  await page.reload();
  await expect(page.getByRole('alert')).toContainText('Showroom mode is off');
  await expect(bar().getByRole('button', { name: 'Save', exact: true })).toBeVisible();
});
