import { expect, type Page, test } from '@playwright/test';
import { choose, drawer, findings, finishes, openPage, option, sample, sentence, settled } from './page';

// One task, twice: another floor into an option, seen by day and in the evening, and all of it taken back.

test.describe.configure({ mode: 'serial' });

let page: Page;
let before: string;

test.beforeAll(async ({ browser }) => {
  page = await openPage(browser);
  before = (await sentence(page).textContent())!;
});
test.afterAll(() => page.context().close());

const basis = () => findings(page).getByText(/^Read in /);
const nothingWarm = () => findings(page).getByText(/^Nothing large you see is warm/);
const floor = () => sample(page, 'floor');

/** Undoes until nothing is left, and counts the steps. */
async function undoAll(undo: () => Promise<void>): Promise<number> {
  const button = page.getByRole('button', { name: /^Undo/ });
  for (let steps = 0; ; steps++) {
    if (await button.isDisabled()) return steps;
    await undo();
  }
}

test('by mouse', async () => {
  await expect(option(page, 'Our floor')).toBeChecked();
  await expect(nothingWarm()).toBeVisible();
  await choose(page, 'Copied look');
  await settled(page);
  await expect(sentence(page)).not.toHaveText(before);
  await expect(nothingWarm()).toHaveCount(0);
  await choose(page, 'Our floor');
  await settled(page);
  await expect(sentence(page)).toHaveText(before);

  await floor().click();
  await expect(drawer(page)).toHaveAccessibleName('Floor');
  // What is fixed is not changed by one tap: it is tried, and kept on purpose.
  await finishes(page).getByRole('option', { name: /WD-01/ }).click();
  await page.getByRole('button', { name: 'Keep' }).click();
  await settled(page);
  await expect(sentence(page)).not.toHaveText(before);
  await expect(nothingWarm()).toHaveCount(0);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await expect(drawer(page)).toHaveCount(0);
  await expect(floor()).toHaveAccessibleName(/birch/);

  await choose(page, 'Evening');
  await settled(page);
  // CIE LED-B2, 2998 K, with a little of the pendants' 2700 K.
  await expect(basis()).toHaveText(/evening light, about 3000 K/);
  const slider = page.getByRole('slider', { name: 'Lamp color' });
  const box = (await slider.boundingBox())!;
  await page.mouse.click(box.x + box.width - 4, box.y + box.height / 2);
  await settled(page);
  // CIE 15:2018, LED-B5: 6598 K.
  await expect(basis()).toHaveText(/evening light, about 6600 K/);
  await page.getByRole('button', { name: 'Light', exact: true }).click();
  const ceiling = page.getByRole('checkbox', { name: 'Ceiling', exact: true });
  await ceiling.click();
  await expect(ceiling).not.toBeChecked();
  await settled(page);
  await ceiling.click();
  await expect(ceiling).toBeChecked();
  await page.getByRole('button', { name: 'Light', exact: true }).click();

  await choose(page, 'Day, overcast');
  const steps = await undoAll(() => page.getByRole('button', { name: /^Undo/ }).click());
  expect(steps).toBe(4);
  await settled(page);
  await expect(sentence(page)).toHaveText(before);
  await expect(floor()).toHaveAccessibleName(/slate/);
});

/** Presses Tab until the place is reached. */
async function tabTo(selector: string): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not reach ${selector}`);
}

test('by keyboard alone', async () => {
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await tabTo('[role=radiogroup][aria-label=Option] input');
  await page.keyboard.press('ArrowLeft');
  await expect(option(page, 'Copied look')).toBeChecked();
  await settled(page);
  await expect(sentence(page)).not.toHaveText(before);
  await page.keyboard.press('ArrowRight');
  await settled(page);
  await expect(sentence(page)).toHaveText(before);

  await tabTo('[data-surfaces~=floor]');
  await page.keyboard.press('Enter');
  const current = finishes(page).getByRole('option', { selected: true });
  await expect(current).toBeFocused();
  // Arrow keys only move; the finish is tried by Enter, as the floor is fixed, and kept in the bar that then has the focus.
  const birch = finishes(page).getByRole('option', { name: /WD-01/ });
  for (let presses = 0; presses < 20; presses++) {
    if (await birch.evaluate((element) => element === document.activeElement)) break;
    await page.keyboard.press('ArrowRight');
  }
  await expect(birch).toBeFocused();
  await expect(sentence(page)).toHaveText(before);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'Keep' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(birch).toBeFocused();
  await settled(page);
  await expect(sentence(page)).not.toHaveText(before);
  await page.keyboard.press('Escape');
  await expect(drawer(page)).toHaveCount(0);
  await expect(floor()).toBeFocused();

  await page.keyboard.press('Shift+Tab');
  await tabTo('[aria-label="Light setting"] input');
  // Overcast day, clear afternoon, evening.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await settled(page);
  await expect(basis()).toHaveText(/evening light, about 3000 K/);
  await tabTo('input[aria-label="Lamp color"]');
  await page.keyboard.press('ArrowRight');
  await settled(page);
  // CIE 15:2018, LED-B3: 4103 K.
  await expect(basis()).toHaveText(/evening light, about 4100 K/);
  await tabTo('[data-opens=light]');
  await page.keyboard.press('Enter');
  const ceiling = page.getByRole('checkbox', { name: 'Ceiling', exact: true });
  await tabTo('.group-switch input:checked');
  await page.keyboard.press('Space');
  await expect(ceiling).not.toBeChecked();
  await page.keyboard.press('Space');
  await expect(ceiling).toBeChecked();
  await page.keyboard.press('Escape');

  await tabTo('[aria-label="Light setting"] input');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('ArrowLeft');
  expect(await undoAll(() => page.keyboard.press('Control+z'))).toBe(4);
  await settled(page);
  await expect(sentence(page)).toHaveText(before);
});
