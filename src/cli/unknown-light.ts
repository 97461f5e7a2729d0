import type { Problem } from '../engine/result';

/** Color temperatures an LED can be modeled for, and those daylight is defined for, K. */
const LED_K = { from: 1800, to: 8000 };
const DAYLIGHT_K = { from: 4000, to: 25_000 };

/** What people write for lights, and what to write for them. */
const COMMON: readonly (readonly [RegExp, string])[] = [
  [/^led\b|^(warm|soft)(\s*white)?$/i, 'Write led:2700,90: color temperature in K and Ra from the package.'],
  [/^(cool|neutral)(\s*white)?$/i, 'Write led:4000,90: color temperature in K and Ra from the package.'],
  [/halogen/i, 'Write planck:3000, or the color temperature on the package.'],
  [/incandescent|tungsten|filament|light\s*bulb|^bulb$/i, 'Write A (CIE illuminant A, 2856 K) or planck:2700.'],
  [/fluorescent|^tube$/i, 'Write FL2 (cool white), FL4 (warm white) or FL11 (three bands, 4000 K).'],
  [/daylight|^day$|^sun(light)?$|^sky$|^north/i, 'Write D65, or daylight: and a color temperature: daylight:5600.'],
  [/^(cie)?\s*(ill\w*\s*)?E$/i, 'E, equal energy, is no light that rooms have: write D50 or D65 for daylight.'],
  [/^(cie)?\s*(ill\w*\s*)?B$/i, 'B is withdrawn: write daylight:5000 or D50.'],
];

/** The problem with words that name no light, with what to write instead where that can be guessed. */
export function unknownLight(words: string, problem: Problem): Problem {
  const said = words.trim();
  const number = /^(?:led\s*)?(\d{4,5})\s*k?(?:[\s,/]+(?:ra|cri)?\s*(\d\d))?$/i.exec(said);
  if (number) {
    const remedy = temperatureRemedy(Number(number[1]), number[2] ?? '90');
    return { code: 'unknown-light', text: `"${said}" does not say which kind of light it is.`, remedy };
  }
  const common = COMMON.find(([pattern]) => pattern.test(said));
  if (problem.code === 'unknown-light' && common) return { ...problem, remedy: common[1] };
  const { code, text } = problem;
  // Where in the words it stands is plain to see.
  if (code !== 'unknown-light') return { code, text, remedy: problem.remedy };
  return { code, text, remedy: `Name a file with a lamp's spectrum, or a light. ${problem.remedy}` };
}

function temperatureRemedy(cct_k: number, ra: string): string {
  const isWithin = ({ from, to }: typeof LED_K) => cct_k >= from && cct_k <= to;
  if (isWithin(LED_K)) return `Write led:${cct_k},${ra}.`;
  return isWithin(DAYLIGHT_K)
    ? `Write daylight:${cct_k}.`
    : `Write led: and a color temperature from ${LED_K.from} to ${LED_K.to} K: led:2700,90.`;
}
