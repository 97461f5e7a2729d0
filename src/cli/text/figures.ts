import type { LabTriple } from '../../engine/judge/assessment';

/** 0.123 as "12%". */
export const percent = (share: number): string => `${Math.round(share * 100)}%`;

/** A number with a fixed count of decimals and no minus before zero. */
export const fixed = (value: number, decimals = 1): string => value.toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1');

/** CIELAB as "L* 88.5, a* -0.8, b* -0.3". */
export const labText = ([l, a, b]: LabTriple): string => `L* ${fixed(l)}, a* ${fixed(a)}, b* ${fixed(b)}`;

/** Color temperature as "2998 K (Duv 0.0004)", or words where there is none. */
export const temperatureText = (cct_k: number | null, duv: number | null): string =>
  cct_k === null || duv === null ? 'no color temperature' : `${Math.round(cct_k)} K, Duv ${fixed(duv, 4)}`;

/** Lines of text broken at spaces so that none is longer than `width`; continuation lines are indented. */
export function wrapped(text: string, indent = '', width = 100): string {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length + word.length + 1 > width && line.trim() !== '') {
      lines.push(line);
      line = indent;
    }
    line += line === indent ? word : ` ${word}`;
  }
  return [...lines, line].join('\n');
}
