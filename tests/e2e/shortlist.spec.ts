import { expect, type Page, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { drawer, finishes, openPage, sample } from './page';

test.describe.configure({ mode: 'serial' });
let page: Page;
test.beforeAll(async ({ browser }) => {
  page = await openPage(browser);
});
test.afterAll(() => page.context().close());

const section = (id: string) => finishes(page).locator(`[data-section=${id}]`);
const row = (id: string) => finishes(page).locator(`[data-finish="${id}"]`);

test('the drawer of an open surface ranks every finish with its reason, and says why', async () => {
  await sample(page, 'backsplash').click();
  await expect(drawer(page)).toContainText('Held against the floor (fixed) and the counters (decided).');
  await expect(section('clear').getByRole('option').first()).toContainText(
    'Its white agrees with that of the counters.',
  );
  await expect(section('compare').locator('[data-finish="TL-03"]')).toContainText('Compare samples.');
  await expect(section('rejected').locator('[data-finish="EN-04"]')).toContainText('looks yellow beside the counters.');
  await expect(row('PT-01')).toHaveCount(0);

  await row('EN-04').focus();
  await page.keyboard.press('?');
  const why = drawer(page).getByRole('region', { name: /^Why: / });
  await expect(why).toContainText('limit 2.6');
  await page.keyboard.press('Escape');
  await expect(row('EN-04')).toBeFocused();
});

test('filters hide, and the plain list is one step away', async () => {
  await drawer(page).getByRole('button', { name: 'Filters' }).click();
  await drawer(page).getByLabel('LRV from').fill('60');
  await expect(row('TL-04')).toHaveCount(0);
  await expect(row('TL-01')).toHaveCount(1);
  await drawer(page).getByRole('button', { name: 'Clear filters' }).click();
  await expect(row('TL-04')).toHaveCount(1);
  await drawer(page)
    .locator('.choice', { hasText: /^Plain list$/ })
    .last()
    .click();
  await expect(section('clear')).toHaveCount(0);
  await expect(finishes(page).getByRole('option').first()).toHaveAttribute('data-finish', 'TL-01');
  await drawer(page)
    .locator('.choice', { hasText: /^By fit$/ })
    .click();
});

test('a wish ranks and says what meets it; a finish is tried from its row, dropped, and the surface left empty', async () => {
  await drawer(page).getByRole('button', { name: 'Wishes' }).click();
  await drawer(page).getByRole('button', { name: 'Add wish' }).click();
  await expect(row('EN-03')).toContainText('our wish: a quiet pattern.');
  await expect(row('TL-03')).toContainText('Meets your wish: a quiet pattern.');
  await expectNoFindings(page, '.drawer');
  await drawer(page).getByRole('button', { name: 'Wishes (1)' }).click();

  const bar = page.getByRole('region', { name: 'Change on trial' });
  await row('EN-03').locator('[data-act=try]').click();
  await expect(bar).toContainText('EN-03');
  await expect(row('EN-03')).toContainText('on trial');
  await expect(row('TL-01')).toHaveAttribute('aria-selected', 'true');
  await row('EN-03').press('t');
  await expect(bar).toHaveCount(0);
  await expect(row('EN-03')).toBeFocused();
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();

  await drawer(page).getByRole('button', { name: 'Leave empty' }).click();
  await expect(drawer(page)).toContainText('Nothing chosen yet');
  await page.keyboard.press('Escape');
});

test('what is fixed shows the plain library, and says so', async () => {
  await sample(page, 'floor').click();
  await expect(drawer(page)).toContainText('Fixed: it stays');
  await expect(section('clear')).toHaveCount(0);
  await expect(finishes(page).getByRole('option').first()).toBeVisible();
});
