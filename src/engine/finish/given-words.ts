import { conditionsWords } from './conditions';
import type { GivenColor } from './given-color';

/** A colour as it was given, in words: 'L* 84, a* 0.5, b* 6 (D50, 2°)', 'Munsell 5Y 9/1', 'LRV 70, warm gray'. */
export function givenWords(color: GivenColor): string {
  switch (color.kind) {
    case 'lab':
      return `${named(['L*', 'a*', 'b*'], color.lab)} (${conditionsWords(color)})`;
    case 'lch':
      return `${named(['L*', 'C*', 'h'], color.lch)}° (${conditionsWords(color)})`;
    case 'xyz':
      return `${named(['X', 'Y', 'Z'], color.xyz)} (${conditionsWords(color)})`;
    case 'munsell':
      return `Munsell ${color.munsell.trim()}`;
    case 'hex':
      return `${color.hex} (${color.space === 'display-p3' ? 'Display P3' : 'sRGB'})`;
    case 'lrv':
      return `LRV ${color.lrv}, ${color.hue}`;
    case 'spectrum': {
      const end_nm = color.start_nm + color.step_nm * (color.reflectance.length - 1);
      return `spectrum, ${color.start_nm}-${Number(end_nm.toFixed(2))} nm, step ${Number(color.step_nm.toFixed(3))} nm`;
    }
  }
}

const named = (names: readonly string[], values: readonly number[]): string =>
  names.map((name, i) => `${name} ${Number(values[i]!.toFixed(4))}`).join(', ');
