import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { SeenBy } from '../../src/ui/picture/SeenBy';

it('says by daylight, and only then, that all choices look the same', () => {
  const markup = (isDaylight: boolean) =>
    renderToStaticMarkup(createElement(SeenBy, { seenBy: 'used-to-it', isDaylight, onSeenBy: () => {} }));
  expect(markup(true)).toContain('all three look the same');
  expect(markup(false)).not.toContain('all three look the same');
});
