import type { Lab } from '../color/types';
import type { LaidFinish } from '../finish/types';
import type { DecisionState, Facing, SurfaceId } from '../surface';
import type { MeetsOthers } from './meets';

/** A part of the light on a surface: `source` is the id of a light group, or of the surface that light left last. */
export interface LightSource {
  readonly source: string;
  readonly kind: 'direct' | 'bounce';
  readonly share: number;
}

/** Light and colour of one surface in place, for one facing. Lab is the installed basis (D = 1 from the adopted white). */
export interface InstalledReading {
  readonly facing: Facing;
  readonly illuminanceLx: number;
  /** At its darkest place. */
  readonly luxMin: number;
  /** Where the light comes from, shares of the illuminance, largest first: a light group, or the surface it left last. */
  readonly lightFrom: readonly LightSource[];
  /** Luminance of the average, relative to a perfect white on the worktop, as CIELAB L*. */
  readonly lightnessInRoom: number;
  /** A perfect white held there: its a*, b* are the tint of the place (L* = 100). */
  readonly placeWhite: Lab<'D65-2'>;
  /** The same white were every surface gray: what the lights alone make of the place. Neutral under one light. */
  readonly lightWhite: Lab<'D65-2'>;
  /** In the order of the finish's components. */
  readonly components: readonly Lab<'D65-2'>[];
  readonly average: Lab<'D65-2'>;
  /**
   * Per component its colour here by every plausible curve of its sample colour, the nominal one first (see
   * `engine/plausible`); one entry where the spectrum was measured. Absent while only the first picture is wanted.
   */
  readonly variants?: readonly (readonly Lab<'D65-2'>[])[];
  /** Which surfaces the tint comes from, as shares of the whole tint, largest first; null while pending. */
  readonly tintFrom: readonly { readonly surface: SurfaceId; readonly share: number }[] | null;
  /** Share of the view per overview viewpoint, 0-1, same order as JudgeInput.overviews. */
  readonly viewShares: readonly number[];
}

export interface JudgedSurface {
  readonly surface: SurfaceId;
  readonly finish: LaidFinish;
  readonly state: DecisionState;
  readonly installed: readonly InstalledReading[];
  /** The surfaces it touches, and those that some viewpoint shows beside it; absent: all count as seen together. */
  readonly meets?: MeetsOthers;
}

/** What shines in a setting, and why little does. */
export interface Burning {
  readonly daylight: boolean;
  readonly lamps: boolean;
  /** The sun shines from a clear sky. */
  readonly hasSun?: boolean;
  /** Lamps that are on are turned down, as people mean them to be. */
  readonly isDimmed?: boolean;
  /** There is daylight, but the sun is down; or there is no window for it. */
  readonly noDaylightFor?: 'night' | 'window';
  /** No lamp is on, and the room has some that could be. */
  readonly hasLampsOff?: boolean;
  /** Lamps are on, but the room has none of them. */
  readonly hasNoLamp?: boolean;
}

/** Everything a judgment needs, as plain data. */
export interface JudgeInput {
  readonly project: string;
  readonly option: string;
  readonly setting: { readonly id: string; readonly cct_k: number | null; readonly duv: number | null };
  /** Which lights burn together: of one spectrum, or a mix. */
  readonly lights: 'one' | 'daylight' | 'daylight-and-lamps' | 'lamps';
  /** Which lights are on at all. */
  readonly burning: Burning;
  readonly surfaces: readonly JudgedSurface[];
  readonly overviews: readonly string[];
  /** Surfaces the room has that nothing is chosen for yet: they are not among `surfaces`. Absent: none. */
  readonly empty?: readonly SurfaceId[];
  /** Someone with low vision uses the kitchen: edges that are hard to see weigh more. */
  readonly lowVision?: boolean;
}
