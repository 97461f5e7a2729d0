import { expect, it } from 'vitest';
import type { AssessedSurface, InstalledRecord } from '../../src/engine/judge/assessment';
import { seenPlaces } from '../../src/ui/reading/seen-places';

const shown = (shares: readonly number[]) => {
  const installed = shares.map((view_share) => ({ view_share }) as InstalledRecord);
  return seenPlaces({ installed } as unknown as AssessedSurface).map((place) => place.view_share);
};

it('shows the most seen way a surface faces first and leaves out edges nobody sees', () => {
  expect(shown([0, 0.07, 0.01])).toEqual([0.07, 0.01]);
});

it('keeps one place of a surface that no overview shows', () => {
  expect(shown([0, 0])).toEqual([0]);
  expect(shown([])).toEqual([]);
});
