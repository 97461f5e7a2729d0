import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** A script that does nothing, in the place of axe where that is there already. */
const NOTHING = ';';

/**
 * axe-core finds nothing on the page, or in the parts of it named by selectors. The mode without a second page suffices, as the page
 * has no frames; only violations are carried over in full. Into a page it is brought once: that takes longer than it works.
 */
export async function expectNoFindings(page: Page, ...parts: readonly string[]): Promise<void> {
  expect(page.frames().length).toBe(1);
  const isMoving = await page.evaluate(() => !matchMedia('(prefers-reduced-motion: reduce)').matches);
  if (isMoving) await page.emulateMedia({ reducedMotion: 'reduce' });
  await faded(page);
  const isThere = await page.evaluate(() => 'axe' in window);
  const axe = new AxeBuilder({ page, ...(isThere && { axeSource: NOTHING }) })
    .setLegacyMode(true)
    .options({ resultTypes: ['violations'] });
  for (const part of parts) axe.include(part);
  const { violations } = await axe.analyze();
  if (isMoving) await page.emulateMedia({ reducedMotion: 'no-preference' });
  const found = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ target }) => target).join(' | ')}`,
  );
  expect(found).toEqual([]);
}

/**
 * Waits until nothing fades or slides any more: text that is half there has half its contrast. That the rows at the picture's foot begin
 * to step back while axe looks is kept from by less motion, with which they do so at once.
 */
async function faded(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const ending = document
      .getAnimations()
      .filter(({ effect }) => Number.isFinite(effect?.getComputedTiming().endTime ?? 0));
    await Promise.allSettled(ending.map(({ finished }) => finished));
  });
}
