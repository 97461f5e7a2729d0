/** The light and the observer a colour is stated under. */
export interface Conditions {
  /** Id of a CIE light: 'D65', 'D50', 'A', 'FL11' ... */
  readonly illuminant: string;
  readonly observer_deg: 2 | 10;
}

/** Whether the instrument counted the mirror-like part of the reflected light (SCI) or trapped it (SCE). */
export type Specular = 'included' | 'excluded';

type Triple = readonly [number, number, number];

/** A colour as somebody gave it. Parsed and range-checked at the edge; the engine turns it into a spectrum. */
export type GivenColor =
  | (Conditions & {
      readonly kind: 'lab';
      readonly lab: readonly [l: number, a: number, b: number];
      readonly specular?: Specular;
    })
  | (Conditions & {
      readonly kind: 'lch';
      /** CIELAB lightness, chroma, hue angle in degrees. */
      readonly lch: readonly [l: number, c: number, h_deg: number];
      readonly specular?: Specular;
    })
  /** Tristimulus values, perfect diffuser Y = 100. */
  | (Conditions & { readonly kind: 'xyz'; readonly xyz: Triple; readonly specular?: Specular })
  /** Munsell notation, '2.5Y 8.5/2' or 'N 9.25/'. */
  | { readonly kind: 'munsell'; readonly munsell: string }
  | {
      readonly kind: 'spectrum';
      readonly start_nm: number;
      readonly step_nm: number;
      readonly reflectance: readonly number[];
      readonly specular?: Specular;
    }
  /** A screen colour; without a space it is sRGB. */
  | { readonly kind: 'hex'; readonly hex: string; readonly space?: 'srgb' | 'display-p3' }
  | { readonly kind: 'lrv'; readonly lrv: number; readonly hue: string };
