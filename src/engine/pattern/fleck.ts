import { chipSheet } from './chips';
import { crystalSheet } from './crystals';
import type { Frame } from './frame';
import type { Sheet } from './sheet';

/** Above this share of flecks there is no binder left to hold chips: the stone is made of crystals. */
const CRYSTALLINE_SHARE = 0.36;

/** Flecked stone of either make: chips in a binder (terrazzo), or interlocking crystals (granite) when flecks abound. */
export function fleckSheet(frame: Frame, size_mm: number, shares: readonly number[], seed: number): Sheet {
  const all = shares.reduce((a, b) => a + b, 0);
  if (all > CRYSTALLINE_SHARE) return crystalSheet(frame, size_mm, shares.length, seed);
  return chipSheet(frame, size_mm, shares, seed);
}
