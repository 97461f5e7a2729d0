import type { GivenColor } from '../../engine/finish/given-color';
import { TYPE_IN } from '../words/drawer';
import { brief } from '../words/numbers';

/** As many letters as the form takes for a name. */
export const MOST_LETTERS = 60;

/** A name for a color that nobody named, by which one tells it from others: how it was given. `file`: of a spectrum. */
export function nameOfGiven(color: GivenColor, file?: string): string {
  const words = TYPE_IN.unnamed;
  const numbers = (triple: readonly number[]) => triple.map(brief).join(' ');
  switch (color.kind) {
    case 'lab':
      return words.lab(numbers(color.lab), `${color.illuminant} ${color.observer_deg}°`);
    case 'lch':
      return words.lch(numbers(color.lch), `${color.illuminant} ${color.observer_deg}°`);
    case 'xyz':
      return words.xyz(numbers(color.xyz), `${color.illuminant} ${color.observer_deg}°`);
    case 'munsell':
      return words.munsell(color.munsell.trim().toUpperCase());
    case 'hex':
      return color.space === 'display-p3' ? words.displayP3(color.hex) : color.hex;
    case 'lrv':
      return words.lrv(brief(color.lrv), color.hue).slice(0, MOST_LETTERS);
    case 'spectrum':
      return file?.replace(/\.\w+$/, '').slice(0, MOST_LETTERS) || words.spectrum;
  }
}
