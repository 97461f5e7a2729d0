import { lightnessFromY } from './lab';

/**
 * Lightness against the lightest near-white in view (highest-luminance rule, Gilchrist et al. 1999, Psychological Review 106,
 * 795), as CIELAB L*: 100 is the anchor itself. Both luminance factors on one scale, `yAnchor` above 0. That the rule holds for
 * counters beside tiles is our judgment.
 */
export const anchoredLightness = (y: number, yAnchor: number): number => lightnessFromY((100 * y) / yAnchor);
