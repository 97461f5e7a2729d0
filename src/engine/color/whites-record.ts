import { lightById } from '../spectrum/lights';
import { observer2, observer10 } from '../spectrum/observers';
import type { ReflectanceSpd } from '../spectrum/types';
import { anchoredLightness } from './anchored-lightness';
import { type CieWhiteness, cieWhiteness, type WhitenessBasis } from './cie-whiteness';
import { type MunsellPlace, type NotWhite, notWhiteE313, yellownessHolds } from './e313-range';
import { xyzD65FromLabD65, yFromLightness } from './lab';
import { stensby } from './stensby';
import type { Lab } from './types';
import { wid } from './wid';
import { xyzFromReflectance } from './xyz';
import { type YellownessBasis, yellownessE313 } from './yellowness';

/** Every figure that says how white a colour is, with what each is good for. */
export interface WhitesRecord {
  /** Whiteness index WID: good at every lightness, made for teeth. */
  readonly wid: number;
  /** Stensby whiteness: no published limits. */
  readonly stensby: number;
  /** CIE whiteness and tint per white and observer; null for black. */
  readonly cie: { readonly [W in WhitenessBasis]: CieWhiteness | null };
  /** ASTM E313 yellowness per white and observer, null for black; says something only where `yellowness_holds`. */
  readonly yellowness_e313: { readonly [W in YellownessBasis]: number | null };
  readonly yellowness_holds: boolean;
  /** Whether ASTM E313 calls it a white at all, and if not, what it exceeds. */
  readonly white_e313: { readonly holds: boolean; readonly why: readonly NotWhite[] };
  /** L* against the lightest near-white beside it; null where none was given. */
  readonly anchored_lightness: number | null;
}

interface WhiteInQuestion {
  readonly labD65: Lab<'D65-2'>;
  /** Reflectance from which the figures under other lights and for 10 degrees are computed. */
  readonly spectrum: ReflectanceSpd;
  readonly munsell: MunsellPlace;
  /** Y, 0-100, of the lightest near-white in view; leave out where the colour is looked at alone. */
  readonly yAnchor?: number;
}

/** The figures of one colour. For what is not white most say that they do not hold. */
export function whitesRecord({ labD65, spectrum, munsell, yAnchor }: WhiteInQuestion): WhitesRecord {
  const under = <W extends WhitenessBasis>(basis: W) =>
    xyzFromReflectance<W>(
      spectrum,
      lightById(basis.slice(0, basis.indexOf('-')))!,
      basis.endsWith('-10') ? observer10 : observer2,
    );
  const cie = <W extends WhitenessBasis>(basis: W) => cieWhiteness(under(basis), basis);
  const yellowness = <W extends YellownessBasis>(basis: W) => yellownessE313(under(basis), basis);
  // The colour itself where it is asked for: a curve cannot be quite black or white.
  const own = xyzD65FromLabD65(labD65);
  const why = notWhiteE313(munsell);
  return {
    wid: wid(labD65),
    stensby: stensby(labD65),
    cie: {
      'D65-2': cieWhiteness(own, 'D65-2'),
      'D65-10': cie('D65-10'),
      'C-2': cie('C-2'),
      'C-10': cie('C-10'),
      'D50-2': cie('D50-2'),
      'D50-10': cie('D50-10'),
    },
    yellowness_e313: {
      'C-2': yellowness('C-2'),
      'C-10': yellowness('C-10'),
      'D65-2': yellownessE313(own, 'D65-2'),
      'D65-10': yellowness('D65-10'),
    },
    yellowness_holds: yellownessHolds(munsell),
    white_e313: { holds: why.length === 0, why },
    anchored_lightness: yAnchor === undefined ? null : anchoredLightness(yFromLightness(labD65.l), yAnchor),
  };
}
