import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { drawer, openPage, sample, watch } from './page';

// US and UK words, metric and US units: chosen under More, seen everywhere at once, kept in the browser. No light is needed here.

test.describe.configure({ mode: 'serial' });

let page: Page;
const US_WORDS = /\b(?:counters?|gray|colors?|toe kick|faucet|cooktop|backsplash|centered)\b/i;

async function under(field: 'Words' | 'Units', name: string): Promise<void> {
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page.getByRole('radiogroup', { name: field }).getByRole('radio', { name, exact: true }).check();
}

/** Every text of the page and every attribute that is read out. */
const readable = (): Promise<string[]> =>
  page.evaluate(() => {
    const texts: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) texts.push((walker.currentNode as Text).data);
    const names = ['aria-label', 'aria-valuetext', 'aria-roledescription', 'title', 'placeholder'];
    for (const element of document.querySelectorAll('*')) {
      for (const name of names) texts.push(element.getAttribute(name) ?? '');
    }
    return texts;
  });
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser, {}, { dark: true });
});
test.afterAll(() => page.context().close());

test('UK words and US units are chosen and show on the screen, in the names of the program’s own finishes, too', async () => {
  const { problems } = watch(page);
  await expect(sample(page, 'backsplash')).toContainText('Backsplash');
  expect(await page.locator('html').getAttribute('lang')).toBe('en-US');
  await under('Words', 'UK');
  await expectNoFindings(page);
  await page.keyboard.press('Escape');
  await under('Units', 'US');
  await page.keyboard.press('Escape');
  await expect(sample(page, 'backsplash')).toContainText('Splashback');
  await expect(sample(page, 'tap')).toContainText('Tap');
  expect(await page.locator('html').getAttribute('lang')).toBe('en-GB');
  const left = (await readable()).filter((text) => US_WORDS.test(text));
  expect(left).toEqual([]);
  await expect(page.locator('[aria-label*="bluish-grey"]').first()).toBeAttached();
  expect(problems).toEqual([]);
});

test('they are there after the page is loaded again, and in the drawer, where both ways of typing are read', async () => {
  await page.reload();
  await sample(page, 'backsplash').click();
  await expect(drawer(page).getByRole('heading', { name: 'Splashback' })).toBeVisible();
  await drawer(page).getByRole('radio', { name: 'Laying' }).check();
  const joint = drawer(page).getByLabel('Joint, in', { exact: true });
  await joint.fill('1/8');
  await expect(page.getByRole('button', { name: 'Undo: laying of the splashback' })).toBeEnabled();
  await joint.fill('5 mm');
  await expect(joint).not.toHaveAttribute('aria-invalid', 'true');
  await joint.fill('2 in');
  await expect(drawer(page).getByText(/^Give a joint from [\d/ ]+ to [\d/ ]+ in\.$/)).toBeVisible();
  await expectNoFindings(page);
  const left = (await readable()).filter((text) => US_WORDS.test(text));
  expect(left).toEqual([]);
});

test('another choice changes what is open and takes nothing away', async () => {
  await drawer(page).getByRole('radio', { name: 'Type one in' }).check();
  const name = drawer(page).getByLabel('Call it');
  await name.fill('Gray tile');
  await under('Words', 'US');
  await page.getByRole('radiogroup', { name: 'Units' }).getByRole('radio', { name: 'Metric', exact: true }).check();
  await page.keyboard.press('Escape');
  await expect(drawer(page).getByRole('heading', { name: 'Backsplash' })).toBeVisible();
  await expect(name).toHaveValue('Gray tile');
  await expect(page.getByRole('button', { name: 'Undo: laying of the backsplash' })).toBeEnabled();
  await drawer(page).getByRole('radio', { name: 'Laying' }).check();
  await expect(drawer(page).getByLabel('Joint, mm', { exact: true })).toHaveValue('5');
});
