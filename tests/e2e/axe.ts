import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/**
 * axe-core finds nothing on the page, or in the parts of it named by selectors. The mode without a second page suffices, as the page
 * has no frames; only violations are carried over in full.
 */
export async function expectNoFindings(page: Page, ...parts: readonly string[]): Promise<void> {
  expect(page.frames().length).toBe(1);
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  for (const part of parts) axe.include(part);
  const { violations } = await axe.analyze();
  const found = violations.map(
    ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ target }) => target).join(' | ')}`,
  );
  expect(found).toEqual([]);
}
