import { xyzD65FromLabD65 } from '../color/lab';
import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import { labD65FromHueValueChroma, munsellValueFromY } from '../naming/munsell';
import { failure, type Problem, type Result, success } from '../result';
import { reflectanceFromXyz } from '../spectrum/reflectance-from-color';
import { HUE_WORDS, hueWord } from './hue-words';

/**
 * A colour from a light reflectance value (LRV 0-100) and a word for its hue (see HUE_WORDS).
 * The lightness is set so that the colour's own curve has that LRV (Y under D65, 10 degrees) to 0.005; a chroma that no
 * surface of that lightness can have is lowered.
 * Problems: 'unknown-hue-word' (lists the known ones), 'lrv-out-of-range'. Notice: 'lrv-and-word-disagree'.
 */
export function labFromLrv(lrv: number, hue: string): Result<Lab<'D65-2'>> {
  if (!(lrv >= 0 && lrv <= 100)) {
    return failure({
      code: 'lrv-out-of-range',
      text: `A light reflectance value of ${lrv} is outside 0-100.`,
      remedy: 'Give the LRV as printed on the sample, 0 for black to 100 for white.',
    });
  }
  const meaning = hueWord(hue);
  if (!meaning) return failure(unknownWord(hue));
  const notices = lrv < meaning.lrv[0] || lrv > meaning.lrv[1] ? [disagreement(lrv, hue, meaning.lrv)] : [];
  for (let chroma = meaning.chroma; chroma > 0.05; chroma *= 0.8) {
    const lab = labWithLrv(lrv, meaning.hue100, chroma);
    if (lab) return success(lab, notices);
  }
  return success(labWithLrv(lrv, 0, 0)!, notices);
}

/** Lightness follows from the LRV through the curve itself; null when no surface can have the colour. */
function labWithLrv(lrv: number, hue100: number, chroma: number): Lab<'D65-2'> | null {
  let y = lrv;
  let lab = labD65FromHueValueChroma(hue100, munsellValueFromY(y), chroma);
  for (let round = 0; round < 8; round++) {
    const rho = reflectanceFromXyz(xyzD65FromLabD65(lab), 'lhtss');
    if (!rho.ok) return null;
    const reached = lrvFromReflectance(rho.value);
    if (Math.abs(reached - lrv) < 0.005) return lab;
    y = Math.min(100, Math.max(0, y + lrv - reached));
    lab = labD65FromHueValueChroma(hue100, munsellValueFromY(y), chroma);
  }
  return null;
}

function unknownWord(hue: string): Problem<'unknown-hue-word'> {
  return {
    code: 'unknown-hue-word',
    text: `'${hue}' is not among the colour words known here.`,
    remedy: `Use one of: ${Object.keys(HUE_WORDS).join(', ')}.`,
  };
}

function disagreement(lrv: number, hue: string, [least, most]: readonly [number, number]): Problem {
  return {
    code: 'lrv-and-word-disagree',
    text: `An LRV of ${lrv} is unusual for '${hue}' (${least}-${most}).`,
    remedy: 'Check both against the sample. The number is used.',
  };
}
