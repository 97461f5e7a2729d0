import type { LampRecord } from '../../engine/lamp/lamp-record';
import { lampMeaning } from '../../model/lamp-meaning';
import { fixed } from './figures';

/** What the test colors of CIE 13.3 look like in daylight, R1 to R14. */
const TEST_COLORS = [
  'light grayish red',
  'dark grayish yellow',
  'strong yellow green',
  'moderate yellowish green',
  'light bluish green',
  'light blue',
  'light violet',
  'light reddish purple',
  'strong red',
  'strong yellow',
  'strong green',
  'strong blue',
  'light skin',
  'leaf green',
] as const;

const MODELED = 'A modeled lamp of that color temperature and Ra; real ones differ.';
const MODELED_IN_PART = 'LEDs in it are modeled from color temperature and Ra; real ones differ.';

/** A lamp in words: its white, how it renders colors, and what that means for a room. `samples`: the file Rf was computed with. */
export function lampText(
  lamp: LampRecord & { readonly name: string; readonly modeled: boolean },
  samples?: string,
): string {
  const { name, modeled, xy, uv, cct_k, duv, ra, r, rf, rg } = lamp;
  const lines = [
    name,
    ...(modeled ? [`  ${name.includes('+') ? MODELED_IN_PART : MODELED}`] : []),
    ...row(
      'Color temperature',
      cct_k === null || duv === null ? 'none' : `${Math.round(cct_k)} K, Duv ${fixed(duv, 4)}`,
    ),
    ...row(
      'Color rendering',
      ra === null ? 'none' : `Ra ${fixed(ra)}${modeled && !name.includes('+') ? ', as asked for' : ''}`,
    ),
    ...(rf === undefined ? [] : row('Color fidelity', `Rf ${fixed(rf)} (CIE 224, with the samples of ${samples})`)),
    ...(rg === undefined
      ? []
      : row('Color gamut', `Rg ${fixed(rg)} (over 100: more vivid than by the reference light)`)),
    ...row(
      'Chromaticity',
      `x ${fixed(xy[0], 4)}, y ${fixed(xy[1], 4)}; u' ${fixed(uv[0], 4)}, v' ${fixed(uv[1], 4)} (1976)`,
    ),
  ];
  if (r) lines.push('  Test colors (CIE 13.3)', ...r.map((value, i) => testColorRow(value, i, modeled ? 0 : 1)));
  return [...lines, ...lampMeaning(lamp).map((sentence) => `  ${sentence}`)].join('\n');
}

const row = (head: string, text: string): readonly string[] => [`  ${head.padEnd(20)}${text}`];

/** Of a modeled lamp no decimals: real ones are further from it. */
const testColorRow = (value: number, i: number, decimals: number): string =>
  `    ${`R${i + 1}`.padEnd(4)}${fixed(value, decimals).padStart(6)}  ${TEST_COLORS[i]}`;
