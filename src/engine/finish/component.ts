import { labD65FromHex } from '../color/display';
import { xyzD65FromLabD65 } from '../color/lab';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import type { Lab } from '../color/types';
import { labD65FromMunsell } from '../naming/munsell';
import { failure, type Problem, type Result, success } from '../result';
import { reflectanceFromXyz } from '../spectrum/reflectance-from-color';
import { reflectanceOnGrid } from '../spectrum/resample';
import type { ReflectanceSpd } from '../spectrum/types';
import { labFromLrv } from './color-from-lrv';
import type { GivenColor } from './given-color';
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
}

/**
 * A component ready to compute with: colour under D65, 2 degrees, and a reflectance that has it. A measured spectrum is
 * used as it is; for a colour a plausible curve is made (sigmoid for wood, LHTSS for all else).
 * A screen colour counts as 'screen', an LRV with a word as 'by-eye', whatever was said; a notice tells.
 * Problems are those of the spectrum, the screen colour, the LRV and 'outside-object-color-solid'.
 */
export function finishComponent(given: GivenComponent): Result<FinishComponent> {
  const { role, share, color } = given;
  const component = (
    labD65: Lab<'D65-2'>,
    spectrum: ReflectanceSpd,
    spectrumSource: FinishComponent['spectrumSource'],
    provenance: Provenance,
  ): FinishComponent => ({
    role,
    share,
    labD65,
    spectrum,
    spectrumSource,
    provenance,
    uncertaintyDe00: UNCERTAINTY_DE00[provenance],
  });

  if (color.kind === 'spectrum') {
    const measured = reflectanceOnGrid(color);
    if (!measured.ok) return measured;
    const lab = labD65FromReflectance(measured.value);
    return success(component(lab, measured.value, 'measured', given.provenance), measured.notices);
  }
  const lab = labOfGiven(color);
  if (!lab.ok) return lab;
  const curve = plausibleReflectance(lab.value, given.finishClass);
  if (!curve.ok) return curve;
  const provenance = provenanceOf(color, given.provenance);
  const lowered = provenance === given.provenance ? [] : [loweredTrust(color, provenance)];
  return success(component(lab.value, curve.value.rho, curve.value.source, provenance), [
    ...(lab.notices ?? []),
    ...lowered,
  ]);
}

type ColorWithoutSpectrum = Exclude<GivenColor, { kind: 'spectrum' }>;

function labOfGiven(color: ColorWithoutSpectrum): Result<Lab<'D65-2'>> {
  switch (color.kind) {
    case 'lab':
      return success({ l: color.lab[0], a: color.lab[1], b: color.lab[2] });
    case 'hex':
      return labD65FromHex(color.hex);
    case 'lrv':
      return labFromLrv(color.lrv, color.hue);
    case 'munsell':
      return labD65FromMunsell(color.munsell);
    case 'lch':
    case 'xyz':
      return failure({
        code: 'color-kind-unknown',
        text: `A color given as ${color.kind} cannot be read yet.`,
        remedy: 'Give it as L*, a*, b*.',
      });
  }
}

function plausibleReflectance(
  lab: Lab<'D65-2'>,
  finishClass: FinishClass,
): Result<{ readonly rho: ReflectanceSpd; readonly source: 'lhtss' | 'sigmoid' }> {
  const xyz = xyzD65FromLabD65(lab);
  if (finishClass === 'wood') {
    const sigmoid = reflectanceFromXyz(xyz, 'sigmoid');
    if (sigmoid.ok) return success({ rho: sigmoid.value, source: 'sigmoid' });
  }
  const smoothest = reflectanceFromXyz(xyz, 'lhtss');
  return smoothest.ok ? success({ rho: smoothest.value, source: 'lhtss' }) : smoothest;
}

function provenanceOf(color: ColorWithoutSpectrum, said: Provenance): Provenance {
  if (color.kind === 'hex') return 'screen';
  if (color.kind === 'lrv') return 'by-eye';
  return said;
}

function loweredTrust(color: ColorWithoutSpectrum, provenance: Provenance): Problem<'provenance-set'> {
  const what = color.kind === 'hex' ? 'A screen color' : 'A light reflectance value with a color word';
  return {
    code: 'provenance-set',
    text: `${what} is known to about ${UNCERTAINTY_DE00[provenance]} CIEDE2000 units, so it counts as '${provenance}'.`,
    remedy: 'Give measured L*, a*, b* or a spectrum for a firmer verdict.',
  };
}
