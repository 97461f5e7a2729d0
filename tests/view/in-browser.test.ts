import { beforeAll, describe } from 'vitest';
import { lab } from './in-browser/lab';

// Everything that looks at pixels of the picture: one browser and one page, as opening them takes longer than most of these tests.
// What a file leaves on the page is cleared before the next.

describe.each([
  ['pattern-parity', () => import('./in-browser/pattern-parity')],
  ['pixels', () => import('./in-browser/pixels')],
  ['render-picture', () => import('./in-browser/render-picture')],
  ['view-modes', () => import('./in-browser/view-modes')],
  ['plane-mirrors', () => import('./in-browser/plane-mirrors')],
  ['held-card', () => import('./in-browser/held-card')],
  ['sheen', () => import('./in-browser/sheen')],
])('%s', async (_, tests) => {
  beforeAll(() => lab.page.evaluate(() => window.lab.startOver()));
  await tests();
});
