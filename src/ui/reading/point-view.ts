import type { ComponentRole } from '../../engine/finish/types';
import type { SeenBy } from '../../kitchen/seen-by';

/** The color and light at one chosen point, as the reading card shows it. */
export interface PointView {
  readonly component: ComponentRole;
  readonly lux: number;
  readonly lab_d65: readonly [number, number, number];
  readonly place_white_lab_d65: readonly [number, number, number];
  /** The pixel there with sheen off, 8 bit sRGB, and whose sight the picture shows. */
  readonly srgb8: readonly [number, number, number];
  readonly seen_by: SeenBy;
}
