import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

// Panes that took the whole state rendered again at every hover.

it('lets every pane take only the parts of the state it shows', () => {
  const panes = readdirSync('src/app/panes');
  expect(panes.length).toBeGreaterThanOrEqual(5);
  const selectors = panes.flatMap((pane) => [
    ...readFileSync(`src/app/panes/${pane}`, 'utf8').matchAll(/useAppState\(\(?(\w+)\)?(?: => ([^)]*))?/g),
  ]);
  expect(selectors.length).toBeGreaterThan(5 * panes.length);
  for (const [, name, body] of selectors) expect(body?.trim()).not.toBe(name);
});
