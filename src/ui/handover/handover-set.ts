import type { Assessment } from '../../engine/judge/assessment';
import type { SurfaceId } from '../../engine/surface';
import type { Caution } from '../../model/cautions';
import type { LengthUnit } from '../../model/length-text';
import type { Finish, Laying, Option, Project, Revision, Setting } from '../../model/project';
import type { SwatchPaint } from '../swatch/swatch-paint';
import type { HandoverItem } from './handover-items';

/** One option in one light: what it looks like and what was found. */
export interface HandoverView {
  readonly setting: Setting;
  /** Address of the picture; null where it was not drawn. */
  readonly picture: string | null;
  readonly assessment: Assessment | null;
}

/** An option of the set. */
export interface HandoverOption {
  readonly option: Option;
  readonly items: readonly HandoverItem[];
  readonly day: HandoverView;
  readonly evening: HandoverView;
  readonly cautions: readonly Caution[];
}

/** Everything the pages are made of. */
export interface HandoverSet {
  readonly project: Project;
  /** The frozen revision that the project is now; null for a draft. */
  readonly revision: Revision | null;
  /** Orders, lots, samples, deliveries, approvals or dates were noted after it was frozen. */
  readonly isNotedSince: boolean;
  readonly date: Date;
  /** The option to sign, one of the next. */
  readonly signed: HandoverOption;
  readonly options: readonly HandoverOption[];
  readonly preparedFor: string;
  readonly preparedBy: string;
  /** From where all pictures are seen; null where there are none. */
  readonly viewpoint: { readonly name: string; readonly isMoved: boolean } | null;
  readonly unit: LengthUnit;
  readonly present: readonly SurfaceId[];
  readonly paintOf: (finish: Finish, laying: Laying) => SwatchPaint;
}
