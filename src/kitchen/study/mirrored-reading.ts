import type { LightFrom } from './light-parts';
import type { VeiledReading } from './veiled-reading';

/** What a point mirrors to the eye that looks at it, and what that does to its color. */
export interface MirroredReading extends VeiledReading {
  /** What is mirrored: a group of lights met directly, or a surface; shares of the mirrored luminance, largest first. */
  readonly parts: readonly { readonly from: LightFrom; readonly share: number }[];
}
