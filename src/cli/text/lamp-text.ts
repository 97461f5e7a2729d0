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

/** A lamp in words: its white, how it renders colors, and what that means for a room. */
export function lampText(lamp: LampRecord & { readonly name: string }): string {
  const { name, xy, uv, cct_k, duv, ra, r, rf, rg } = lamp;
  const lines = [
    name,
    ...row(
      'Color temperature',
      cct_k === null || duv === null ? 'none' : `${Math.round(cct_k)} K, Duv ${fixed(duv, 4)}`,
    ),
    ...row('Color rendering', ra === null ? 'none' : `Ra ${fixed(ra)}`),
    ...(rf === undefined ? [] : row('Color fidelity', `Rf ${fixed(rf)} (CIE 224, 99 samples)`)),
    ...(rg === undefined
      ? []
      : row('Color gamut', `Rg ${fixed(rg)} (over 100: more vivid than by the reference light)`)),
    ...row(
      'Chromaticity',
      `x ${fixed(xy[0], 4)}, y ${fixed(xy[1], 4)}; u' ${fixed(uv[0], 4)}, v' ${fixed(uv[1], 4)} (1976)`,
    ),
  ];
  if (r) lines.push('  Test colors (CIE 13.3)', ...r.map(testColorRow));
  return [...lines, ...lampMeaning(lamp).map((sentence) => `  ${sentence}`)].join('\n');
}

const row = (head: string, text: string): readonly string[] => [`  ${head.padEnd(20)}${text}`];

const testColorRow = (value: number, i: number): string =>
  `    ${`R${i + 1}`.padEnd(4)}${fixed(value).padStart(6)}  ${TEST_COLORS[i]}`;
