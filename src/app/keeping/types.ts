import type { Problem } from '../../engine/result';
import type { Project } from '../../model/project';
import type { WhyUnkept } from './store-error';

/** What the page knows of keeping the open project. */
export interface Keeping {
  /**
   * `nothing`: it is as it always opens; `elsewhere`: another tab has it; `keeping` only where it takes longer than one would notice; else why
   * the browser keeps nothing.
   */
  readonly state: 'nothing' | 'keeping' | 'kept' | 'elsewhere' | WhyUnkept;
  /** The present document as the store holds it; null where it holds none. */
  readonly document: Project | null;
  readonly notice: KeepingNotice | null;
  /** Why nothing is kept, as it was told last: nobody is told twice. */
  readonly told: WhyUnkept | null;
}

export type KeepingNotice =
  /** Another tab has the project; `wasHere`: it took it from this one. */
  | { readonly kind: 'elsewhere'; readonly wasHere: boolean }
  /** A kept project cannot be read; it stays as it is. */
  | { readonly kind: 'unreadable'; readonly project: string; readonly name: string; readonly problem: Problem }
  /** Another project came in the place of one that is kept, or of the demo as it always opens (null). */
  | {
      readonly kind: 'switched';
      readonly to: string;
      readonly from: { readonly id: string; readonly name: string } | null;
    }
  /** The open project was removed; `to`: the one that is open now, null: the demo as it always opens. */
  | { readonly kind: 'removed'; readonly id: string; readonly name: string; readonly to: string | null }
  /** The browser keeps nothing. */
  | { readonly kind: 'unkept'; readonly why: WhyUnkept };

export const NOT_KEPT: Keeping = { state: 'nothing', document: null, notice: null, told: null };
