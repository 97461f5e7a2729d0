import { expect, type Page } from '@playwright/test';
import type { Rgb } from './even-pixels';
import { reading } from './page';

export interface PlaceRead {
  readonly surface: string;
  /** What the engine says the pixel there is. */
  readonly rgb: Rgb;
}

/**
 * Presses a place of the picture (CSS px of the page) and reads it; null where nothing with a finish to be read lies: a window, a
 * lamp, what samples stand on.
 */
export async function readPlace(page: Page, x: number, y: number): Promise<PlaceRead | null> {
  await page.keyboard.press('Escape');
  await expect(reading(page)).toBeHidden();
  await page.mouse.click(x, y);
  // What is pressed opens its reading at once; the numbers of the place follow.
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  if (!(await reading(page).isVisible())) return null;
  const surface = await reading(page)
    .getByRole('combobox', { name: /^Surface/ })
    .inputValue();
  // The first is the place's own; a white held there follows.
  const shown = reading(page)
    .getByText(/^rgb\(/)
    .first();
  await expect(shown).toBeVisible();
  const [r, g, b] = (await shown.textContent())!.match(/\d+/g)!.map(Number);
  return { surface, rgb: [r!, g!, b!] };
}
