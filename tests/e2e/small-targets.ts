import type { Page } from '@playwright/test';

/** What a finger should hit is this wide and high, CSS px (WCAG 2.2, 2.5.5). */
const LEAST_PX = 44;

/**
 * The controls in sight that are smaller than a finger needs, with their size. A checkbox or radio button is as large as its label. Handles
 * of a drawing are left out: they lie as close as what they move, and every one has a field beside it.
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const controls =
      'button, select, textarea, summary, a[href], input:not([type=file]), [role=option], [role=gridcell], .finish-act';
    return [...document.querySelectorAll<HTMLElement>(controls)]
      .filter((element) => element.checkVisibility({ visibilityProperty: true }))
      .filter((element) => !element.closest('.hidden-visually, .fitting-ruler'))
      .map((element) =>
        element.matches('[type=checkbox], [type=radio]') ? (element.closest('label') ?? element) : element,
      )
      .flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        // Half a pixel is lost where a row ends between two.
        if (width > least - 0.5 && height > least - 0.5) return [];
        const name = element.ariaLabel ?? element.textContent?.trim().slice(0, 40);
        return [`${element.tagName} ${element.className} "${name}" ${width.toFixed(1)} x ${height.toFixed(1)}`];
      });
  }, LEAST_PX);
}
