import { xyzD65FromLabD65 } from '../engine/color/lab';
import type { Lab } from '../engine/color/types';
import { cieTint, cieWhiteness, cieWhitenessHolds, wid, yellownessE313 } from '../engine/color/whiteness';

/** Whiteness figures of a color under D65, 2 degrees. The CIE figures say nothing where `cie_valid` is false. */
export interface WhitenessRecord {
  /** Whiteness index WID, works at every lightness. */
  readonly wid: number;
  readonly cie_w: number;
  readonly cie_tint: number;
  readonly cie_valid: boolean;
  /** ASTM E313 yellowness index; null for a perfect black, which has none. */
  readonly yellowness_e313: number | null;
}

export function whitenessOf(lab: Lab<'D65-2'>): WhitenessRecord {
  const xyz = xyzD65FromLabD65(lab);
  return {
    wid: wid(lab),
    cie_w: cieWhiteness(xyz),
    cie_tint: cieTint(xyz),
    cie_valid: cieWhitenessHolds(xyz),
    yellowness_e313: xyz.y > 0 ? yellownessE313(xyz) : null,
  };
}
