import { lightnessFromY, xyzD65FromLabD65 } from '../color/lab';
import { lrvFromReflectance } from '../color/lrv';
import type { Lab } from '../color/types';
import { isccNbsName } from '../naming/iscc-nbs';
import { munsellFromLabD65 } from '../naming/munsell';
import { failure, type Problem, type Result, success } from '../result';
import { HUE_PLACE_L, HUE_PLACES } from './hue-places.data';
import { HUE_WORDS, hueWordOf } from './hue-words';
import { type PlausibleReflectance, plausibleReflectance } from './plausible-reflectance';
import type { FinishClass } from './types';

interface ColorWithLrv {
  readonly labD65: Lab<'D65-2'>;
  readonly curve: PlausibleReflectance;
}

/**
 * A colour from a light reflectance value (LRV 0-100) and a word for its hue (see HUE_WORDS).
 * The lightness is set so that the colour's own curve has that LRV (Y under D65, 10 degrees) to 0.005; a chroma that no
 * surface of that lightness can have is lowered.
 * Problems: 'unknown-hue-word' (lists the known ones), 'lrv-out-of-range'. Notice: 'lrv-and-word-disagree'.
 */
export function colorFromLrv(lrv: number, hue: string, finishClass: FinishClass): Result<ColorWithLrv> {
  if (!(lrv >= 0 && lrv <= 100)) {
    return failure({
      code: 'lrv-out-of-range',
      text: `A light reflectance value of ${lrv} is outside 0-100.`,
      remedy: 'Give the LRV as printed on the sample, 0 for black to 100 for white.',
    });
  }
  const word = hueWordOf(hue);
  if (!word) return failure(unknownWord(hue));
  const made = colorNear(lrv, word, finishClass);
  const [least, most] = HUE_WORDS[word]!.lrv;
  return success(made, lrv < least || lrv > most ? [disagreement(lrv, word, made.labD65)] : []);
}

/** With the word's own chroma, or as much of it as a surface can have. */
function colorNear(lrv: number, word: string, finishClass: FinishClass): ColorWithLrv {
  for (let strength = 1; strength > 0.005; strength *= 0.8) {
    const color = colorWithLrv(lrv, word, strength, finishClass);
    if (color) return color;
  }
  return colorWithLrv(lrv, word, 0, finishClass)!;
}

/** Lightness follows from the LRV through the curve itself; null when no surface can have the colour. */
function colorWithLrv(lrv: number, word: string, strength: number, finishClass: FinishClass): ColorWithLrv | null {
  let y = lrv;
  let labD65 = labAt(word, lightnessFromY(y), strength);
  for (let round = 0; round < 8; round++) {
    const curve = plausibleReflectance(xyzD65FromLabD65(labD65), finishClass);
    if (!curve.ok) return null;
    const reached = lrvFromReflectance(curve.value.rho);
    if (Math.abs(reached - lrv) < 0.005) return { labD65, curve: curve.value };
    y = Math.min(100, Math.max(0, y + lrv - reached));
    labD65 = labAt(word, lightnessFromY(y), strength);
  }
  return null;
}

/** The colour of a hue word at a lightness, between the table's columns in a straight line; `strength` scales its chroma. */
function labAt(word: string, l: number, strength: number): Lab<'D65-2'> {
  const places = HUE_PLACES[word]!;
  const last = HUE_PLACE_L.length - 1;
  let i = 0;
  while (i < last - 1 && HUE_PLACE_L[i + 1]! < l) i++;
  const from = HUE_PLACE_L[i]!;
  const f = Math.min(1, Math.max(0, (l - from) / (HUE_PLACE_L[i + 1]! - from)));
  const at = (k: number) => strength * (places[2 * i + k]! * (1 - f) + places[2 * i + 2 + k]! * f);
  return { l, a: at(0), b: at(1) };
}

function unknownWord(hue: string): Problem<'unknown-hue-word'> {
  return {
    code: 'unknown-hue-word',
    text: `'${hue}' is not among the color words known here.`,
    remedy: `Use one of: ${Object.keys(HUE_WORDS).join(', ')}.`,
  };
}

function disagreement(lrv: number, word: string, labD65: Lab<'D65-2'>): Problem<'lrv-and-word-disagree'> {
  const [least, most] = HUE_WORDS[word]!.lrv;
  const { name } = isccNbsName(munsellFromLabD65(labD65));
  const level = lrv > most ? 'light' : 'dark';
  const reads = name.endsWith(word) ? `unusually ${level}` : `so ${level} that it reads ${name}`;
  return {
    code: 'lrv-and-word-disagree',
    text: `At LRV ${lrv}, ${word} is ${reads}; usual are ${least}-${most}.`,
    remedy: 'Check the number.',
  };
}
