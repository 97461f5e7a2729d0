import type { SkyKind } from '../engine/daylight/types';
import type { GivenColor } from '../engine/finish/given-color';
import type { ComponentRole, FinishClass, Provenance } from '../engine/finish/types';
import type { FinishPattern, Layout, SlabMatch, Turn, Variation } from '../engine/pattern/types';
import type { DecisionState, SurfaceId } from '../engine/surface';
import type { LampGroup } from './fixture';
import type { Kitchen } from './kitchen';
import type { LogEntry } from './log';
import type { CopiedLook } from './look';
import type { ExtraItem, ItemRecord, Job, SampleRecord } from './order/records';
import type { Price } from './price';
import type { QuantityAssumptions } from './quantity/assumptions';

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
  readonly price?: Price;
  readonly availability?: string;
}

/** The kept library a finish was taken from, and what it is called there. */
export interface FinishOrigin {
  readonly library: string;
  readonly name: string;
  readonly finish: string;
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
  /** Real size of a whole slab, mm; where it is absent, that usual for its class. */
  readonly slab_mm?: readonly [length: number, width: number];
  /** Real thickness of piece, slab or sheet, mm. */
  readonly thickness_mm?: number;
  readonly provenance: Provenance;
  /** Root mean square CIEDE2000 by which the colors may be off, where that is known to be more than usual for the provenance. */
  readonly uncertainty_de00?: number;
  readonly note?: string;
  /** Short words of one's own to find it by, each once. */
  readonly tags?: readonly string[];
  readonly supply?: Supply;
  readonly origin?: FinishOrigin;
}

/** How a finish sits on a surface. */
export interface Laying {
  readonly layout: Layout;
  readonly joint_mm?: number;
  readonly grout?: string;
  /** Turns grain, veins, boards or rows from the surface's own direction (along fronts, along the back wall). */
  readonly direction_deg?: Turn;
  /** Where pieces start: from the middle, with equal cuts at both edges (absent), or whole from the first corner. */
  readonly start?: 'centered' | 'corner';
  /** How a slab goes on beyond its end (absent: opened like a book), and how far it is moved along its length, mm. */
  readonly slab?: { readonly match: SlabMatch; readonly shift_mm: number };
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
  readonly note?: string;
  readonly scheme: Scheme;
  /** What is said of items of its schedule; absent while there is nothing. */
  readonly items?: readonly ItemRecord[];
  /** What is ordered besides; absent where there is nothing. */
  readonly extras?: readonly ExtraItem[];
}

/** What lets daylight in, in the order of light groups: light from outside that has one spectrum. */
export type DaylightGroup = 'sky' | 'sun' | 'ground' | 'facing';
export type GroupId = DaylightGroup | LampGroup;
export const DAYLIGHT_GROUPS: readonly DaylightGroup[] = ['sky', 'sun', 'ground', 'facing'];
export const LAMP_GROUPS: readonly LampGroup[] = ['ceiling', 'under-cabinet', 'pendant', 'hood'];
/** Daylight first: the picture keeps the first four and the last four apart, as they change apart. */
export const GROUPS: readonly GroupId[] = [...DAYLIGHT_GROUPS, ...LAMP_GROUPS];

/** `light` is the id of a lamp of the project, or words for a light (see `engine/lamp/light-words`); `level` 0-1 dims. */
export interface GroupSetting {
  readonly level: number;
  readonly light: string;
  /** What dimming does to the color: nothing (absent), or it turns warmer as a filament does. */
  readonly dims?: 'warm';
}

/** The daylight of a setting: a sky at a moment, by the clock of the kitchen's site. */
export interface Daylight {
  readonly sky: SkyKind;
  readonly month: number;
  readonly day: number;
  /** 0-24, decimal. */
  readonly hour: number;
  /** Share of the daylight that blinds let through, 0-1; 1 = no blind. */
  readonly blind: number;
  /** Illuminance of the open horizontal under an overcast sky where it is known, lx; else it follows from the sun's elevation. */
  readonly sky_lx?: number;
  /** Words for the sky's light where it is known; else it follows from the kind of sky. */
  readonly light?: string;
}

export interface Setting {
  readonly id: string;
  readonly name: string;
  /** Null: no daylight, by night. */
  readonly daylight: Daylight | null;
  readonly lamps: { readonly [G in LampGroup]: GroupSetting };
}

/** Luminous intensities of a lamp as its file gives them (IES LM-63, type C): cd per horizontal angle, vertical angles within. */
export interface BeamRecord {
  readonly id: string;
  readonly label: string;
  /** Lumens of the lamp that was measured. */
  readonly lumens: number;
  readonly vertical_deg: readonly number[];
  readonly horizontal_deg: readonly number[];
  readonly candela: readonly (readonly number[])[];
  readonly note?: string;
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

/** Someone who uses the kitchen and whom its measures or finishes should suit. */
export type UserNeed = 'over-65' | 'low-vision' | 'wheelchair' | 'children';
export const USERS: readonly UserNeed[] = ['over-65', 'low-vision', 'wheelchair', 'children'];

/** The project document: everything one saves. Immutable; changed only by commands. */
export interface Project {
  readonly type: 'upstand-project';
  readonly version: 9;
  readonly id: string;
  readonly name: string;
  readonly note: string;
  /** Whom the kitchen has to suit besides the usual; absent where nothing is known of them. */
  readonly users?: readonly UserNeed[];
  /** Year the house was built; absent where it is not known. */
  readonly year_built?: number;
  readonly kitchen: Kitchen;
  readonly settings: readonly Setting[];
  /** Lamps whose spectrum was given by the user; absent when there are none. */
  readonly lamps?: readonly Lamp[];
  /** Beams read from files; absent when there are none. */
  readonly beams?: readonly BeamRecord[];
  readonly library: readonly Finish[];
  readonly options: readonly Option[];
  /** Looks copied from elsewhere; absent when there are none. */
  readonly looks?: readonly CopiedLook[];
  /** Whom the work is for and when; absent while nothing is known. */
  readonly job?: Job;
  /** What quantities rest on, where it is not the usual; absent where all is. */
  readonly quantities?: Partial<QuantityAssumptions>;
  /** Physical samples, by finish; absent while there are none. */
  readonly samples?: readonly SampleRecord[];
  /** What was noted and decided, oldest first; absent while there is nothing. */
  readonly log?: readonly LogEntry[];
  /** Frozen copies, oldest first; absent while there are none. */
  readonly revisions?: readonly Revision[];
}

/** A project without what grows beside it. */
export type ProjectDocument = Omit<Project, 'log' | 'revisions'>;

/** A frozen copy of a project, to look at, to compare with and to go back to. */
export interface Revision {
  /** R1, R2, ... in the order they were frozen. */
  readonly id: string;
  readonly name: string;
  /** ISO 8601 with its offset from UTC. */
  readonly at: string;
  readonly note: string;
  readonly document: ProjectDocument;
}
