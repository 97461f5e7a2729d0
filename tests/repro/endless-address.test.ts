import { expect, it } from 'vitest';
import { readFragment } from '../../src/io/link/option-link';

// What stands behind a link was looked for from every one of its characters, before its length was looked at: some ten thousand dots in
// an address held the page up for seconds.

it('a fragment that is far too long is refused before anything is done to it', () => {
  const done: (string | symbol)[] = [];
  class Watched extends String {}
  for (const name of ['slice', 'replace', 'trimEnd', 'split', 'at', 'charCodeAt'] as const) {
    Object.defineProperty(Watched.prototype, name, { get: () => done.push(name) });
  }
  const read = readFragment(new Watched(`#o1.${'.'.repeat(1_000_000)}`) as string);
  expect(!read.ok && read.problem.code).toBe('link-too-large');
  expect(done).toEqual([]);
});

it('what stands behind a link is looked at once', () => {
  // As many dots as a link may have, and none of them at its end.
  expect(readFragment(`#o1.${'.'.repeat(199_999)}A`)).toMatchObject({ ok: false, problem: { code: 'damaged-link' } });
});
