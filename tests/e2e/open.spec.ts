import { expect, test } from '@playwright/test';
import { canvas, colorCount, findings, finishes, sentence, settled, shot, watch } from './page';

test('opens the demo: picture, findings, quiet console, nothing asked from elsewhere', async ({ page, baseURL }) => {
  const watched = watch(page);
  const response = await page.goto('./');
  expect(response?.ok()).toBe(true);
  await expect(page).toHaveTitle('Upstand');
  await expect(findings(page)).toHaveAttribute('aria-busy', 'true');

  await expect(canvas(page)).toBeVisible();
  await settled(page);
  await expect(sentence(page)).not.toBeEmpty();
  await expect(findings(page).getByRole('button', { name: 'Why' }).first()).toBeVisible();
  await expect(findings(page)).not.toContainText('Still working');

  // A room in light has hundreds of colors even at 32 steps a channel; an empty or flat canvas has a few. It need not be still: its
  // light goes on getting finer.
  await expect.poll(async () => colorCount(await shot(page))).toBeGreaterThan(100);
  const isLost = await canvas(page).evaluate((element: HTMLCanvasElement) =>
    element.getContext('webgl2')!.isContextLost(),
  );
  expect(isLost).toBe(false);

  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  expect(policy).toMatch(/default-src 'self'/);
  expect(policy).not.toMatch(/unsafe-|https?:|\*/);

  await page.locator('[data-sample=floor]').click();
  await expect(finishes(page).getByRole('option').first()).toBeVisible();
  const origin = new URL(baseURL!).origin;
  expect(watched.requests.length).toBeGreaterThan(3);
  expect(watched.requests.filter((address) => new URL(address).origin !== origin)).toEqual([]);
  expect(watched.problems).toEqual([]);
});
