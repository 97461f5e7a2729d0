import type { GivenColor } from '../engine/finish/given-color';
import type { ComponentRole, FinishClass, Provenance } from '../engine/finish/types';
import type { FinishPattern, Layout, Variation } from '../engine/pattern/types';
import type { DecisionState, SurfaceId } from '../engine/surface';

export interface FinishColor {
  readonly role: ComponentRole;
  readonly share: number;
  readonly color: GivenColor;
  /** Light reflectance value printed beside the colour, 0-100: checked against it, never used instead of it. */
  readonly lrv?: number;
}

/** What one needs to order it. All optional: a typed-in finish has none. */
export interface Supply {
  readonly supplier?: string;
  readonly code?: string;
  readonly unit?: string;
  readonly pack?: number;
  readonly lead_time_weeks?: number;
  readonly price_band?: '$' | '$$' | '$$$';
  readonly availability?: string;
}

/** A material one can order. */
export interface Finish {
  readonly id: string;
  readonly label: string;
  readonly class: FinishClass;
  readonly gloss_gu: number;
  readonly components: readonly FinishColor[];
  readonly pattern: FinishPattern;
  readonly variation: Variation;
  /** Real size of one piece (tile, board), mm; absent for sheets, slabs and paint. */
  readonly piece_mm?: readonly [width: number, length: number];
  readonly provenance: Provenance;
  readonly note?: string;
  readonly supply?: Supply;
}

/** How a finish sits on a surface. */
export interface Laying {
  readonly layout: Layout;
  readonly joint_mm?: number;
  readonly grout?: string;
  /** 90 turns grain, veins or boards a quarter from the surface's own direction (along fronts, along the back wall). */
  readonly direction_deg?: 0 | 90;
}

/** What lies on one surface, and how settled it is. */
export interface Placement {
  readonly finish: string;
  readonly state: DecisionState;
  readonly laying: Laying;
}

export type Scheme = { readonly [S in SurfaceId]: Placement };

export interface Option {
  readonly id: string;
  readonly name: string;
  readonly scheme: Scheme;
}

export type GroupId = 'sky' | 'ceiling' | 'under-cabinet';
export const GROUPS: readonly GroupId[] = ['sky', 'ceiling', 'under-cabinet'];

/** `light` is the id of a lamp of the project, or words for a light (see `engine/lamp/light-words`); `level` 0-1 dims. */
export interface GroupSetting {
  readonly level: number;
  readonly light: string;
}

export interface Setting {
  readonly id: string;
  readonly name: string;
  readonly groups: { readonly [G in GroupId]: GroupSetting };
}

/** The parametric kitchen; lengths in mm. One layout for now. */
export interface Kitchen {
  readonly layout: 'l-island';
  readonly name: string;
  readonly room: { readonly width: number; readonly depth: number; readonly height: number };
  readonly fronts: 'flat' | 'five-piece';
  readonly base: {
    readonly depth: number;
    readonly carcass_height: number;
    readonly plinth_height: number;
    readonly plinth_recess: number;
  };
  readonly counter: { readonly depth: number; readonly thickness: number; readonly overhang: number };
  readonly wall_units: { readonly depth: number; readonly height: number; readonly gap_above_counter: number };
  readonly tall_height: number;
  readonly island: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly depth: number;
    readonly seat_overhang: number;
  };
  readonly window: {
    readonly wall: 'left';
    readonly center: number;
    readonly width: number;
    readonly sill: number;
    readonly height: number;
    readonly reveal: number;
  };
  readonly door: { readonly width: number; readonly height: number; readonly from_right: number };
  readonly skirting_height: number;
  readonly upstand_height: number;
  readonly lamps: {
    readonly ceiling: { readonly count: number; readonly size: number; readonly lumens_each: number };
    readonly under_cabinet: { readonly width: number; readonly lumens_per_m: number };
  };
  readonly sky_lx: number;
}

/** A lamp with a spectrum of its own: relative power at equal steps. */
export interface Lamp {
  readonly id: string;
  readonly label: string;
  readonly start_nm: number;
  readonly step_nm: number;
  readonly power: readonly number[];
  /** Where the spectrum comes from. */
  readonly note?: string;
}

/** The project document: everything one saves. Immutable; changed only by commands. */
export interface Project {
  readonly type: 'upstand-project';
  readonly version: 1;
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly kitchen: Kitchen;
  readonly settings: readonly Setting[];
  /** Lamps whose spectrum was given by the user; absent when there are none. */
  readonly lamps?: readonly Lamp[];
  readonly library: readonly Finish[];
  readonly options: readonly Option[];
}
