import type { Problem } from '../../engine/result';
import type { Project } from '../../model/project';

/** What the page knows of keeping the open project. */
export interface Keeping {
  /**
   * `nothing`: it is as it always opens; `full`: the disk is; `closed`: the browser keeps nothing; `elsewhere`: another tab has it;
   * `keeping` only where it takes longer than one would notice.
   */
  readonly state: 'nothing' | 'keeping' | 'kept' | 'full' | 'closed' | 'elsewhere';
  /** The present document as the store holds it; null where it holds none. */
  readonly document: Project | null;
  readonly notice: KeepingNotice | null;
}

export type KeepingNotice =
  /** Another tab has the project; `wasHere`: it took it from this one. */
  | { readonly kind: 'elsewhere'; readonly wasHere: boolean }
  /** A kept project cannot be read; it stays as it is. */
  | { readonly kind: 'unreadable'; readonly project: string; readonly name: string; readonly problem: Problem }
  /** Another project came in the place of one that is kept. */
  | { readonly kind: 'switched'; readonly to: string; readonly from: { readonly id: string; readonly name: string } };

export const NOT_KEPT: Keeping = { state: 'nothing', document: null, notice: null };
