import { differenceCiede2000 } from '../color/difference';
import { lightnessFromY } from '../color/lab';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import { type Problem, type Result, success } from '../result';
import type { GivenColor, Specular } from './given-color';
import { curveOfGiven, type GivenCurve } from './given-curve';
import { isInstrumentKind, mirrorDoubtDe00 } from './mirror-doubt';
import { notationDoubtDe00 } from './notation-doubt';
import { withMirrorPart } from './specular';
import { translationDoubtDe00 } from './translation-doubt';
import type { ComponentRole, FinishClass, FinishComponent, Provenance } from './types';
import { UNCERTAINTY_DE00 } from './uncertainty';

export { averageComponent } from './average';
export { HUE_WORDS } from './hue-words';
export { UNCERTAINTY_DE00 } from './uncertainty';

/** One colour of a finish as somebody gave it. */
export interface GivenComponent {
  readonly role: ComponentRole;
  /** Area share in its surface, 0-1. */
  readonly share: number;
  readonly color: GivenColor;
  readonly finishClass: FinishClass;
  readonly provenance: Provenance;
  /** Gloss units at 60 degrees (ISO 2813), for a colour measured with the mirror-like part excluded. */
  readonly glossGu?: number;
  /** Light reflectance value printed beside the colour, 0-100: checked against it, never used instead of it. */
  readonly lrv?: number;
  /** Root mean square CIEDE2000 where it is known to be more than the provenance stands for; less does not count. */
  readonly uncertaintyDe00?: number;
}

/** LRVs are printed as whole numbers and differ by about one between instruments; more is a mistake. Our judgment. */
const LRV_TOLERANCE = 2;

/**
 * A component ready to compute with: its reflectance (see `curveOfGiven`), mirror-like part included (see `specular.ts`), and
 * the colour that has under D65, 2 degrees. Its uncertainty is that of how it came to be known and, for numbers given for another
 * light or observer, of the curve between (see `translationDoubtDe00`), for a Munsell notation, of its rounding (see
 * `notationDoubtDe00`), and of a mirror-like part that was put back or of which nobody said (see `mirrorDoubtDe00`).
 * Problems are those of the spectrum, the screen colour, the notation, the LRV, the light and the observer, and
 * 'outside-object-color-solid'. Notices beside those of the spectrum and the LRV word: a screen colour counts as 'screen' and
 * an LRV with a word as 'by-eye', whatever was said ('provenance-set'); a printed LRV that is not the colour's
 * ('lrv-disagrees'); what became of an excluded mirror-like part ('specular-added', 'gloss-missing', 'metal-specular'); a measured
 * metal of which nobody said ('metal-specular-unsaid').
 */
export function finishComponent(given: GivenComponent): Result<FinishComponent> {
  const { role, share, color, finishClass } = given;
  const counted = wholeCurve(given);
  if (!counted.ok) return counted;
  const { curve, whole, specular, provenance } = counted.value;
  const component: FinishComponent = {
    role,
    share,
    labD65: whole.labD65,
    spectrum: whole.rho,
    spectrumSource: whole.source,
    provenance,
    uncertaintyDe00: Math.hypot(
      Math.max(UNCERTAINTY_DE00[provenance], given.uncertaintyDe00 ?? 0),
      translationDoubtDe00(color, curve, finishClass),
      notationDoubtDe00(color),
      mirrorDoubtDe00({ ...given, provenance }, curve),
    ),
    finishClass,
    ...(specular && { specular }),
    ...(color.kind === 'lrv' && { lightnessDe00: lightnessDoubt(color.lrv) }),
  };
  return success(component, counted.notices);
}

/** A colour as a curve, as given and with its mirror-like part counted. */
export interface WholeCurve {
  readonly curve: GivenCurve;
  readonly whole: GivenCurve;
  readonly specular: Specular | undefined;
  readonly provenance: Provenance;
}

/**
 * What `finishComponent` makes, with its problems and notices, but without how far it is known: that takes thirty times as long for a
 * colour given under another light.
 */
export function wholeCurve(given: GivenComponent): Result<WholeCurve> {
  const { color, finishClass } = given;
  const curve = curveOfGiven(color, finishClass);
  if (!curve.ok) return curve;
  const { whole, specular, notice } = mirrorPartCounted(curve.value, given);
  const provenance = provenanceOf(color, given.provenance);
  return success({ curve: curve.value, whole, specular, provenance }, [
    ...(curve.notices ?? []),
    ...(notice ? [notice] : []),
    ...(provenance === given.provenance ? [] : [loweredTrust(color, provenance)]),
    ...lrvDisagreement(whole, given),
  ]);
}

/** How far a printed LRV may be off, root mean square: whole numbers, and instruments differ by about one. Our judgment. */
const LRV_ERROR = 1;

/** The same in CIEDE2000, the larger way. */
function lightnessDoubt(lrv: number): number {
  const grayOf = (y: number): Lab<'D65-2'> => ({ l: lightnessFromY(Math.min(100, Math.max(0, y))), a: 0, b: 0 });
  const steps = [lrv - LRV_ERROR, lrv + LRV_ERROR].map((y) => differenceCiede2000(grayOf(lrv), grayOf(y)));
  return Math.max(...steps);
}

interface Counted {
  readonly whole: GivenCurve;
  readonly specular: Specular | undefined;
  readonly notice: Problem | null;
}

function mirrorPartCounted(curve: GivenCurve, { color, finishClass, glossGu, provenance }: GivenComponent): Counted {
  const specular = 'specular' in color ? color.specular : undefined;
  if (specular !== 'excluded') {
    const isOpen = !specular && finishClass === 'metal' && provenance === 'measured' && isInstrumentKind(color);
    return { whole: curve, specular, notice: isOpen ? METAL_UNSAID : null };
  }
  if (finishClass === 'metal') return { whole: curve, specular, notice: METAL_SPECULAR };
  if (glossGu === undefined || Number.isNaN(glossGu)) return { whole: curve, specular, notice: GLOSS_MISSING };
  const rho = withMirrorPart(curve.rho, glossGu);
  const whole = { rho, labD65: labD65FromReflectance(rho), source: curve.source };
  const rise = lrvFromReflectance(rho) - lrvFromReflectance(curve.rho);
  return { whole, specular: 'included', notice: rise < LEAST_TOLD ? null : specularAdded(rise, glossGu) };
}

/** Points of LRV; what is less changes no verdict. */
const LEAST_TOLD = 0.5;

const specularAdded = (rise: number, glossGu: number): Problem => ({
  code: 'specular-added',
  text: `Measured without mirror reflection: ${rise.toFixed(1)} points of LRV were added for ${glossGu} gloss units.`,
  remedy: 'Measure with the mirror reflection included (SCI) if your instrument can.',
});

const GLOSS_MISSING: Problem = {
  code: 'gloss-missing',
  text: 'Measured without mirror reflection, and the gloss is not known: the color stays as measured.',
  remedy: 'Give the gloss at 60° so that the mirror reflection can be added.',
};

const METAL_SPECULAR: Problem = {
  code: 'metal-specular',
  text: 'A metal measured without mirror reflection: most of its light is missing, and nobody can tell how much.',
  remedy: 'Measure it with the mirror reflection included (SCI).',
};

const METAL_UNSAID: Problem = {
  code: 'metal-specular-unsaid',
  text: 'Nobody said whether this metal was measured with its mirror reflection; without it most of its light is missing.',
  remedy: 'Say whether it is included (SCI) or excluded (SCE).',
};

function provenanceOf(color: GivenColor, said: Provenance): Provenance {
  if (color.kind === 'hex') return 'screen';
  if (color.kind === 'lrv') return 'by-eye';
  return said;
}

function loweredTrust(color: GivenColor, provenance: Provenance): Problem<'provenance-set'> {
  const what = color.kind === 'hex' ? 'A screen color' : 'A light reflectance value with a color word';
  return {
    code: 'provenance-set',
    text: `${what} is known to about ${UNCERTAINTY_DE00[provenance]} CIEDE2000 units, so it counts as '${provenance}'.`,
    remedy: 'Give measured L*, a*, b* or a spectrum for a firmer verdict.',
  };
}

function lrvDisagreement({ rho }: GivenCurve, { color, lrv }: GivenComponent): readonly Problem<'lrv-disagrees'>[] {
  if (lrv === undefined) return [];
  const own = lrvFromReflectance(rho);
  if (Math.abs(own - lrv) <= LRV_TOLERANCE) return [];
  const measured = isInstrumentKind(color);
  return [
    {
      code: 'lrv-disagrees',
      text: `The printed LRV is ${lrv}, but the color given has ${own.toFixed(1)} (D65, 10°). The color is used.`,
      remedy: measured
        ? 'Check the numbers, the light and observer they are for, and whether they belong to the same sample.'
        : 'Check both against the sample.',
    },
  ];
}
