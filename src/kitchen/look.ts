import type { SkyLuminance } from '../engine/daylight/types';
import type { AtlasLayout } from '../engine/light/types';
import type { PatternTexture } from '../engine/pattern/types';
import type { SeenBy } from './seen-by';

/** What comes of the two layers of direct light (daylight, lamps); null: as it was last. */
export type ByLayer<T> = readonly [daylight: T | null, lamps: T | null];

/** Direct light: it depends on geometry, and daylight on the outdoors. */
export interface RoomLight {
  readonly directAtlas: AtlasLayout;
  /** RGBA floats, one channel per light group of the layer, lx at level 1. */
  readonly direct: ByLayer<Float32Array>;
  readonly nodeAtlas: AtlasLayout;
  /** Per prop mesh: RGBA per vertex, direct lx per group of the layer. */
  readonly propDirect: ByLayer<readonly Float32Array[]>;
  /** Grows each time `direct` is refined. */
  readonly revision: number;
  /** True when what is lit in the setting shown will not get any finer. */
  readonly isFinal: boolean;
}

/** How one surface looks in one option under one setting: colours in exposed, adapted linear sRGB. */
export interface SurfaceLook {
  readonly surface: number;
  readonly finish: string;
  /** Per component and group: r, g, b per lx of direct light at that group's level (level included). */
  readonly groupColors: readonly Float32Array[];
  /** Colour of each component beside white under the adopted white, as an eye used to it sees it: linear sRGB. */
  readonly flat: readonly (readonly [number, number, number])[];
  readonly glossGu: number;
  readonly metal: boolean;
  /** Number of the component that is the grout between pieces, matt whatever the pieces are; absent or below 0: none. */
  readonly joint?: number;
  /** A metal with brush lines along its pattern; absent: not. */
  readonly brushed?: boolean;
  /** Key into Look.patterns; null = plain (component 0 only). */
  readonly pattern: string | null;
  /** How far the pattern is moved on each piece: (ds, dt) per piece number, m; absent or null where it is not. */
  readonly shifts?: Float32Array | null;
}

/** Everything the picture needs for one option under one setting, besides geometry. */
export interface Look {
  readonly option: string;
  readonly setting: string;
  readonly seenBy: SeenBy;
  readonly surfaces: readonly SurfaceLook[];
  /** Per group: r, g, b of a perfect white per lx of direct light at that group's level. */
  readonly groupWhites: Float32Array;
  /** Four layers of RGBA half floats in the node atlas: indirect colour of component 0-3 of the surface there. */
  readonly nodeColors: Uint16Array;
  /**
   * Per prop mesh: r, g, b per vertex, indirect colour of component 0; of a mesh with pattern coordinates of every component, one after
   * another.
   */
  readonly propColors: readonly Float32Array[];
  readonly patterns: ReadonlyMap<string, PatternTexture>;
  /** Colour of each lamp face (per room.light.lamps), exposed linear sRGB. */
  readonly lampColors: readonly (readonly [number, number, number])[];
  /** Null by night. */
  readonly outside: OutsideLook | null;
}

/** What is seen through a window: pi times luminance behind the glass of straight incidence, exposed linear sRGB. */
export interface OutsideLook {
  readonly zenith: readonly [number, number, number];
  readonly ground: readonly [number, number, number];
  /** A wall across the way of the first window that has one; black where none has. */
  readonly facing: readonly [number, number, number];
  /** How the sky's luminance is spread, relative to its zenith. */
  readonly sky: SkyLuminance;
  readonly sunShines: boolean;
  /** The wall across the way is laid of bricks. */
  readonly isBrick: boolean;
  /** The cloths of the roller blinds (per room.light.blinds): share of the window they cover, and the daylight that comes through each. */
  readonly covered: number;
  readonly cloths: readonly (readonly [number, number, number])[];
  /** Blinds let through this share, which is in the colors already; 1 = none. */
  readonly blind: number;
  /** The picture shows what is outside darker by this factor, at least 1 (see local-exposure.ts). */
  readonly darkenedBy: number;
}
