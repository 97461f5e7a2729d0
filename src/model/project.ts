import type { OutdoorMaterial, Site, SkyKind } from '../engine/daylight/types';
import type { GivenColor } from '../engine/finish/given-color';
import type { ComponentRole, FinishClass, Provenance } from '../engine/finish/types';
import type { FinishPattern, Layout, SlabMatch, Turn, Variation } from '../engine/pattern/types';
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
  /** Real size of a whole slab, mm; where it is absent, that usual for its class. */
  readonly slab_mm?: readonly [length: number, width: number];
  readonly provenance: Provenance;
  readonly note?: string;
  readonly supply?: Supply;
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
  readonly scheme: Scheme;
}

/** What lets daylight in, in the order of light groups: light from outside that has one spectrum. */
export type DaylightGroup = 'sky' | 'sun' | 'ground' | 'facing';
/** Lamps that dim together and share one spectrum. */
export type LampGroup = 'ceiling' | 'under-cabinet' | 'pendant' | 'hood';
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

/** Walls as one stands with the back to the door's wall: `front` is the door's wall, `back` the one before one's eyes. */
export type Wall = 'left' | 'back' | 'right' | 'front';

/** A window or glazed door. `center` along the wall from the corner at the room's origin (front left), mm. */
export interface Opening {
  readonly id: string;
  readonly kind: 'window' | 'glazed-door';
  readonly wall: Wall;
  readonly center: number;
  readonly width: number;
  /** Above the floor; 0 for a door. */
  readonly sill: number;
  readonly height: number;
  /** From the inside of the wall to the glass. */
  readonly reveal: number;
  /** Leaves side by side, 1-6. */
  readonly leaves: number;
  /** Panes of glass one behind the other, 1-3. */
  readonly panes: number;
  /** How high a wall across the way stands above the horizon, seen from here; 0 = open view. */
  readonly facing_deg: number;
}

/** Where the house stands and what lies around it. */
export interface KitchenSite extends Site {
  /** Compass bearing the back wall faces outward, clockwise from north. */
  readonly bearing_deg: number;
  readonly ground: OutdoorMaterial;
  /** What a wall across the way is made of. */
  readonly facing: OutdoorMaterial;
}

/** How a lamp spreads its light: evenly as a matte face does, in a beam, or as a file says. */
export type BeamChoice =
  | { readonly kind: 'wide' }
  /** Full angle within which intensity is at least half its peak. */
  | { readonly kind: 'spread'; readonly angle_deg: number }
  /** Id of a beam of the project. */
  | { readonly kind: 'file'; readonly beam: string; readonly turn_deg: number };

export type FixtureKind = 'downlight' | 'panel' | 'strip' | 'pendant' | 'under-cabinet' | 'hood';

/** Middle of a lamp on the plan from the front left corner, mm. */
export type PlanPoint = readonly [x: number, y: number];

interface FixtureBase {
  readonly id: string;
  /** Lamps of one group dim together. */
  readonly group: LampGroup;
  readonly beam: BeamChoice;
}

/** Lamps of one kind in a kitchen. Lengths in mm; lumens are those that leave the lamp at full level. */
export type Fixture =
  | (FixtureBase & {
      readonly kind: 'downlight';
      readonly count: number;
      readonly diameter: number;
      readonly lumens_each: number;
      /** Where they sit; spread evenly where absent. */
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'panel';
      readonly count: number;
      readonly width: number;
      readonly length: number;
      readonly lumens_each: number;
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'pendant';
      readonly count: number;
      readonly diameter: number;
      /** Lower edge of the shade above the floor. */
      readonly height: number;
      readonly lumens_each: number;
      /** Where they hang; in a row over the island where absent. */
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'strip';
      /** On top of the wall units, shining up; or in the toe kick, shining down. */
      readonly run: 'above-wall-units' | 'toe-kick';
      readonly width: number;
      readonly lumens_per_m: number;
    })
  | (FixtureBase & {
      readonly kind: 'under-cabinet';
      readonly run: 'front' | 'middle' | 'back';
      readonly width: number;
      readonly lumens_per_m: number;
    })
  | (FixtureBase & {
      readonly kind: 'hood';
      readonly count: number;
      readonly diameter: number;
      readonly lumens_each: number;
    });

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
  /** Middle of the sink along the left wall, from the front. */
  readonly sink: { readonly center: number };
  readonly island: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly depth: number;
    readonly seat_overhang: number;
  };
  readonly site: KitchenSite;
  readonly openings: readonly Opening[];
  readonly door: { readonly width: number; readonly height: number; readonly from_right: number };
  readonly skirting_height: number;
  readonly upstand_height: number;
  readonly fixtures: readonly Fixture[];
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

/** The project document: everything one saves. Immutable; changed only by commands. */
export interface Project {
  readonly type: 'upstand-project';
  readonly version: 2;
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly kitchen: Kitchen;
  readonly settings: readonly Setting[];
  /** Lamps whose spectrum was given by the user; absent when there are none. */
  readonly lamps?: readonly Lamp[];
  /** Beams read from files; absent when there are none. */
  readonly beams?: readonly BeamRecord[];
  readonly library: readonly Finish[];
  readonly options: readonly Option[];
}
