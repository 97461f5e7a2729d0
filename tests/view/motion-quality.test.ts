import { expect, it } from 'vitest';
import { MotionQuality } from '../../src/view/motion-quality';

function sharesAt(gaps: readonly number[]): number[] {
  const quality = new MotionQuality();
  let now = 1000;
  return gaps.map((gap) => {
    now += gap;
    quality.noteFrame(now);
    return quality.share;
  });
}

const steady = (gap: number, count: number): number[] => Array.from({ length: count }, () => gap);

it('reaches full quality where frames come at 60 Hz', () => {
  expect(sharesAt(steady(16.7, 8)).at(-1)).toBe(1);
});

it('goes coarser where frames are slow, and a single slow frame changes nothing', () => {
  expect(sharesAt(steady(60, 8)).at(-1)).toBe(0.45);
  expect(sharesAt([25, 25, 80, 25, 25]).at(-1)).toBe(0.6);
});

it('does not swing back and forth when full quality is too slow', () => {
  const shares = sharesAt([...steady(16.7, 6), ...steady(50, 5), ...steady(16.7, 200)]);
  expect(shares[5]).toBe(1);
  expect(shares.slice(10).every((share) => share === 0.6)).toBe(true);
});

it('takes a pause of the hand for what it is', () => {
  expect(sharesAt([25, 900, 900, 900, 900, 900]).at(-1)).toBe(0.6);
});
