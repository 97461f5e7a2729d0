/** A colour as somebody gave it. Parsed and range-checked at the edge; the engine turns it into a spectrum. */
export type GivenColor =
  | {
      readonly kind: 'lab';
      readonly lab: readonly [l: number, a: number, b: number];
      readonly illuminant: 'D65';
      readonly observer_deg: 2;
    }
  | {
      readonly kind: 'spectrum';
      readonly start_nm: number;
      readonly step_nm: number;
      readonly reflectance: readonly number[];
    }
  | { readonly kind: 'hex'; readonly hex: string }
  | { readonly kind: 'lrv'; readonly lrv: number; readonly hue: string };
