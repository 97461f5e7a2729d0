import { expect, it } from 'vitest';
import { onScreenText } from '../../src/ui/reading/on-screen-text';
import type { PointView } from '../../src/ui/reading/point-view';

const at = (darkened: number): PointView =>
  ({ srgb8: [200, 198, 190], seen_by: 'used-to-it', darkened }) as unknown as PointView;

it('says of a pixel that its place is darkened, where it is', () => {
  expect(onScreenText(at(1))).toBe('rgb(200, 198, 190)');
  expect(onScreenText(at(6.03))).toBe('rgb(200, 198, 190), darkened 6.0 times');
});
