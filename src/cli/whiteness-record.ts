import { type WhitesRecord, whitesRecord } from '../engine/color/whites-record';
import type { FinishComponent } from '../engine/finish/types';
import { munsellFromLabD65 } from '../engine/naming/munsell';

/** Whiteness figures of a color. The first five are for D65, 2 degrees; CIE figures say nothing where `cie_valid` is false. */
export interface WhitenessRecord {
  /** Whiteness index WID, works at every lightness. */
  readonly wid: number;
  /** CIE whiteness and tint; null for a perfect black, which has none. */
  readonly cie_w: number | null;
  readonly cie_tint: number | null;
  readonly cie_valid: boolean;
  /** ASTM E313 yellowness index; null for a perfect black, which has none. Says something only where `yellowness_holds`. */
  readonly yellowness_e313: number | null;
  readonly yellowness_holds: boolean;
  readonly white_e313: WhitesRecord['white_e313'];
  readonly stensby: number;
  /** CIE whiteness and yellowness under other whites and observers, from the spectrum computed with. */
  readonly cie: WhitesRecord['cie'];
  readonly yellowness: WhitesRecord['yellowness_e313'];
}

export function whitenessOf({ labD65, spectrum }: FinishComponent): WhitenessRecord {
  const whites = whitesRecord({ labD65, spectrum, munsell: munsellFromLabD65(labD65) });
  const cie = whites.cie['D65-2'];
  return {
    wid: whites.wid,
    cie_w: cie?.w ?? null,
    cie_tint: cie?.tint ?? null,
    cie_valid: cie?.holds ?? false,
    yellowness_e313: whites.yellowness_e313['D65-2'],
    yellowness_holds: whites.yellowness_holds,
    white_e313: whites.white_e313,
    stensby: whites.stensby,
    cie: whites.cie,
    yellowness: whites.yellowness_e313,
  };
}
