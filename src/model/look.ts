import type { GivenColor } from '../engine/finish/given-color';
import type { ComponentRole, FinishClass, Provenance } from '../engine/finish/types';
import type { FinishPattern } from '../engine/pattern/types';
import type { SurfaceId } from '../engine/surface';

/** One color of a surface in a look. */
export interface LookColor {
  readonly role: ComponentRole;
  /** Area share in its surface; those of a surface are scaled to sum 1. */
  readonly share: number;
  readonly color: GivenColor;
  readonly provenance: Provenance;
}

/** What a look has on one surface. All but the colors is optional: a picture shows little more. */
export interface LookSurface {
  readonly surface: SurfaceId;
  readonly colors: readonly LookColor[];
  /** Id of the finish it was, where the look was a scheme: a library that has it can lay it again. */
  readonly finish?: string;
  readonly class?: FinishClass;
  readonly gloss_gu?: number;
  readonly pattern?: FinishPattern['kind'];
  /** Size of the pattern's figure, mm. */
  readonly pattern_mm?: number;
}

/**
 * Somebody else's scheme, to be carried over: from a scheme, or from points on a picture. Of a picture only these colors are kept:
 * no pixels, no place, no time.
 */
export interface CopiedLook {
  readonly id: string;
  readonly name: string;
  readonly source: 'scheme' | 'picture';
  readonly surfaces: readonly LookSurface[];
  readonly note?: string;
}
