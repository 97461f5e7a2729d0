import { expect, type Page, test } from '@playwright/test';
import { findings, openPage, sample, sentence } from './page';

// What would help with a warning, tried before it is made: dropped, then tried again, kept and undone.

test('a repair is tried, dropped, tried again, kept, and undone as one step', async ({ browser }) => {
  const page = await openPage(browser, { hasTouch: true }, { help: true });
  const before = await sentence(page).textContent();
  expect(before).toContain('One warm surface would settle it');
  const help = findings(page).getByRole('button', { name: /^What would help/ });
  const outlined = page.locator('[data-outlined]');
  await findings(page).locator('.warning p').first().hover();
  await expect(outlined.first()).toBeVisible();
  await page.mouse.move(0, 0);
  await expect(outlined).toHaveCount(0);
  // A tap leaves the focus behind, but nothing outlined.
  await help.first().tap();
  await expect(help.first()).toBeFocused();
  await expect(outlined).toHaveCount(0);
  const tryIt = findings(page).getByRole('button', { name: /^Try .*backsplash/ });
  // The library is looked through once the picture is at full quality.
  await expect(tryIt.first()).toBeVisible({ timeout: 180_000 });
  await expectSameForCamera(page);
  const tile = sample(page, 'backsplash');
  const laid = await tile.textContent();
  const bar = page.getByRole('region', { name: 'Change on trial' });

  await tryIt.first().click();
  await expect(bar).toContainText('Trying in Our floor: backsplash');
  await expect(bar.locator('p').first()).toBeFocused();
  await expect(sentence(page)).not.toHaveText(before!);
  await expect(bar).toContainText(/Against before: (clears|leaves a note of) 1 warning/, { timeout: 180_000 });
  expect(
    await findings(page)
      .locator('.findings-body')
      .evaluate((body) => body.scrollTop),
  ).toBe(0);
  expect(await tile.textContent()).not.toBe(laid);
  await page.keyboard.press('Escape');
  await expect(bar).toBeHidden();
  await expect(sentence(page)).toHaveText(before!);
  expect(await tile.textContent()).toBe(laid);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();

  // The warning was gone meanwhile; what would help with it is known still.
  await help.first().click();
  await tryIt.first().click();
  await bar.getByRole('button', { name: 'Keep' }).click();
  await expect(bar).toBeHidden();
  // What one pressed to try it is gone, so the findings have the focus.
  await expect(findings(page).getByRole('heading', { name: 'Balance in Our floor' })).toBeFocused();
  await expect(sentence(page)).not.toHaveText(before!);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(sentence(page)).toHaveText(before!);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await page.context().close();
});

/** Nothing that is said, nor what would help with it, rests on the eye that the picture is for. */
async function expectSameForCamera(page: Page): Promise<void> {
  const said = await findings(page).textContent();
  for (const eye of ['A camera set to daylight', 'Eyes used to the light (findings use this)']) {
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('radio', { name: eye, exact: true }).check();
    await page.keyboard.press('Escape');
    expect(await findings(page).textContent()).toBe(said);
  }
}
