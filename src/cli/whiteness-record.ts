import { cieWhiteness } from '../engine/color/cie-whiteness';
import { xyzD65FromLabD65 } from '../engine/color/lab';
import type { Lab } from '../engine/color/types';
import { wid } from '../engine/color/wid';
import { yellownessE313 } from '../engine/color/yellowness';

/** Whiteness figures of a color under D65, 2 degrees. The CIE figures say nothing where `cie_valid` is false. */
export interface WhitenessRecord {
  /** Whiteness index WID, works at every lightness. */
  readonly wid: number;
  /** CIE whiteness and tint; null for a perfect black, which has none. */
  readonly cie_w: number | null;
  readonly cie_tint: number | null;
  readonly cie_valid: boolean;
  /** ASTM E313 yellowness index; null for a perfect black, which has none. */
  readonly yellowness_e313: number | null;
}

export function whitenessOf(lab: Lab<'D65-2'>): WhitenessRecord {
  const xyz = xyzD65FromLabD65(lab);
  const cie = cieWhiteness(xyz, 'D65-2');
  return {
    wid: wid(lab),
    cie_w: cie?.w ?? null,
    cie_tint: cie?.tint ?? null,
    cie_valid: cie?.holds ?? false,
    yellowness_e313: yellownessE313(xyz, 'D65-2'),
  };
}
