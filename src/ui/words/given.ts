import { conditionsWords } from '../../engine/finish/conditions';
import type { GivenColor } from '../../engine/finish/given-color';
import { exact } from './numbers';
import { spoken } from './spoken';

/** Words for a color as somebody gave it, with the conditions it was given under. */
const GIVEN = spoken({
  numbers: (names: readonly string[], values: readonly string[], under: string) =>
    `${names.map((name, i) => `${name} ${values[i]}`).join(', ')} · ${under}`,
  munsell: (notation: string) => `Munsell ${notation}`,
  displayP3: (hex: string) => `${hex} on Display P3`,
  lrv: (lrv: string, hue: string) => `LRV ${lrv}, “${hue}”`,
  spectrum: (bands: number, from: string, to: string) => `${bands} bands, ${from}–${to} nm`,
  printed: (words: string, lrv: string) => `${words} · LRV ${lrv} printed`,
} as const);

/** "L* 91.2, a* −0.4, b* 3.1 · D50, 2°", "#f3efe4", "31 bands, 400–700 nm", with a printed LRV behind it. */
export function givenText(color: GivenColor, printed?: number): string {
  const words = colorText(color);
  return printed === undefined || color.kind === 'lrv' ? words : GIVEN.printed(words, exact(printed));
}

function colorText(color: GivenColor): string {
  switch (color.kind) {
    case 'lab':
      return GIVEN.numbers(['L*', 'a*', 'b*'], color.lab.map(exact), conditionsWords(color));
    case 'lch':
      return GIVEN.numbers(['L*', 'C*', 'h'], color.lch.map(exact), conditionsWords(color));
    case 'xyz':
      return GIVEN.numbers(['X', 'Y', 'Z'], color.xyz.map(exact), conditionsWords(color));
    case 'munsell':
      return GIVEN.munsell(color.munsell);
    case 'hex':
      return color.space === 'display-p3' ? GIVEN.displayP3(color.hex) : color.hex;
    case 'lrv':
      return GIVEN.lrv(exact(color.lrv), color.hue);
    case 'spectrum': {
      const end = color.start_nm + color.step_nm * (color.reflectance.length - 1);
      return GIVEN.spectrum(color.reflectance.length, exact(color.start_nm), exact(end));
    }
  }
}
