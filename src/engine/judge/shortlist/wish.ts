import type { FinishClass } from '../../finish/types';
import type { SurfaceId } from '../../surface';

/** What somebody would like of a finish; wishes rank and never reject. */
export type Wish =
  | { readonly kind: 'class'; readonly class: FinishClass }
  /** Light reflectance value, 0-100. */
  | { readonly kind: 'lrv'; readonly from: number; readonly to: number }
  /** Gloss units at 60 degrees. */
  | { readonly kind: 'sheen'; readonly from: number; readonly to: number }
  | { readonly kind: 'price'; readonly bands: readonly string[] }
  | { readonly kind: 'availability'; readonly words: string }
  | { readonly kind: 'pattern'; readonly pattern: 'quiet' | 'lively' }
  /** Not lighter, or not darker, than what lies on another surface. */
  | { readonly kind: 'no-lighter-than' | 'no-darker-than'; readonly surface: SurfaceId };
