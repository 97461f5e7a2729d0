import { chromaOf } from '../../color/lab';
import type { PairVerdict } from '../assessment';
import { MINOR_SHARE } from '../component-record';
import { judgePair, PAIR } from '../pair';
import type { SampleColor } from '../sample-color';
import { mainColor, type SeenSurface } from './seen-scheme';
import type { EchoKind } from './types';

/** A lean that has a name, or more. */
export const isNamed = (color: SampleColor): boolean =>
  chromaOf(color.lab) > 0 && color.strength() >= PAIR.namedStrength;

/** Colors of a surface that are more than grout lines or hair veins. */
export const majorColors = ({ colors }: SeenSurface): readonly SampleColor[] =>
  colors.filter(({ weight }) => weight >= MINOR_SHARE).map(({ color }) => color);

/** The stronger the later. */
const ECHO_RANK: Readonly<Record<EchoKind, number>> = { hue: 1, whites: 2, alike: 3 };

export interface Echo {
  readonly how: EchoKind;
  readonly one: SampleColor;
  readonly other: SampleColor;
  readonly numbers: Readonly<Record<string, number>>;
}

/** A stronger echo does what a weaker one did. */
export const isAtLeast = (echo: EchoKind | null, wanted: EchoKind): boolean =>
  echo !== null && ECHO_RANK[echo] >= ECHO_RANK[wanted];

/** Surfaces look alike, or agree as whites, by what covers most of them; a fleck or a vein can take up a hue. */
function echoOf(verdict: PairVerdict, isMain: boolean, isNamedHue: boolean): EchoKind | null {
  switch (verdict) {
    case 'same':
    case 'match':
      return isMain ? 'alike' : isNamedHue ? 'hue' : null;
    case 'agree':
      return isMain ? 'whites' : null;
    default:
      return verdict === 'relates' ? 'hue' : null;
  }
}

/** The strongest echo between two surfaces by their samples; null where none of their colors answers one of the other's. */
export function echoBetween(a: SeenSurface, b: SeenSurface): Echo | null {
  let found: Echo | null = null;
  for (const one of majorColors(a)) {
    for (const other of majorColors(b)) {
      const { verdict, numbers } = judgePair(
        { color: one, lab: one.lab },
        { color: other, lab: other.lab },
        { anchorY: null },
      );
      const isMain = one === mainColor(a) && other === mainColor(b);
      const how = echoOf(verdict, isMain, isNamed(one) && isNamed(other));
      if (how && (!found || ECHO_RANK[how] > ECHO_RANK[found.how])) found = { how, one, other, numbers };
    }
  }
  return found;
}
