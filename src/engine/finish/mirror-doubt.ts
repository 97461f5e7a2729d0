import { differenceCiede2000 } from '../color/difference';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import type { GivenColor } from './given-color';
import type { GivenCurve } from './given-curve';
import { withMirrorPart } from './specular';
import type { FinishClass, Provenance } from './types';

/** What is left open of a mirror-like part that was put back by its gloss, as a share of the change it makes. Our judgment. */
const OPEN_WHEN_PUT_BACK = 1 / 3;

/** The same of one that is or may be missing, and nobody knows how much or whether. Our judgment. */
const OPEN_WHEN_NOT_KNOWN = 1 / 2;

/** Middle of the MPI gloss level that goes by the name satin, for a gloss nobody knows. */
const MIDDLING_GLOSS_GU = 28;

interface MirrorGiven {
  readonly color: GivenColor;
  readonly finishClass: FinishClass;
  readonly provenance: Provenance;
  readonly glossGu?: number;
}

/** Kinds that an instrument gives, which counts the mirror-like part or traps it. */
export const isInstrumentKind = (color: GivenColor): boolean => color.kind === 'spectrum' || 'illuminant' in color;

/**
 * How far a colour is open by its mirror-like part, root mean square, CIEDE2000; `curve` is the reflectance as given. A third of
 * the change where the part was trapped and is put back by a model; half of the change where it was trapped and the gloss is
 * not known (that of satin is taken), and where an instrument's numbers of a known gloss do not say. 0 where it is included;
 * for numbers that are not measured, whose own doubt is wider and has it in; and for metals, of which nobody can tell.
 */
export function mirrorDoubtDe00({ color, finishClass, provenance, glossGu }: MirrorGiven, curve: GivenCurve): number {
  if (finishClass === 'metal' || !isInstrumentKind(color)) return 0;
  const specular = 'specular' in color ? color.specular : undefined;
  const hasGloss = glossGu !== undefined && !Number.isNaN(glossGu);
  const change = (gloss: number) =>
    differenceCiede2000(curve.labD65, labD65FromReflectance(withMirrorPart(curve.rho, gloss)));
  if (specular === 'excluded') {
    return hasGloss ? OPEN_WHEN_PUT_BACK * change(glossGu) : OPEN_WHEN_NOT_KNOWN * change(MIDDLING_GLOSS_GU);
  }
  return specular === undefined && provenance === 'measured' && hasGloss ? OPEN_WHEN_NOT_KNOWN * change(glossGu) : 0;
}
