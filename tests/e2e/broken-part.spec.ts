import { expect, test } from '@playwright/test';
import { expectNoFindings } from './axe';
import { LIGHT_WORKER, silence } from './page';

// What is fetched when it is wanted may be gone: a newer version came meanwhile, or there is no network.

test('a dialog that cannot be fetched leaves the page and the work as they are', async ({ page }) => {
  await silence(page, LIGHT_WORKER);
  await page.route(/LibrariesPane-.*\.js$/, (route) => route.abort());
  await page.goto('./');
  await page.getByRole('button', { name: 'More' }).click();
  await page.getByRole('button', { name: 'Libraries…' }).click();
  const broken = page.getByRole('alert').filter({ hasText: 'could not be loaded' });
  await expect(broken).toBeVisible();
  await expect(broken.getByRole('button')).toHaveText(['Save my work', 'Close', 'Reload the page']);
  await expectNoFindings(page);
  await broken.getByRole('button', { name: 'Close' }).click();
  await expect(broken).toHaveCount(0);
  await expect(page.getByRole('banner').getByRole('button', { name: 'Save', exact: true })).toBeVisible();
});

test('a program that cannot be fetched says so instead of nothing', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'Worker', {
      value: class {
        constructor() {
          throw new Error('no workers here');
        }
      },
    });
  });
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Upstand could not start.' })).toBeVisible();
});
