import type { SurfaceId } from '../surface';
import type { BalanceVerdict } from './assessment';
import type { Firmness } from './firmness';
import { lowerFirst, sentenceCase, surfacesPhrase } from './surface-words';
import type { TemperatureClass } from './temperature-class';

/** Surfaces named as the carriers of a class: enough to see why, few enough to read. */
const NAMED_CARRIERS = 6;

const phrase = (surfaces: readonly SurfaceId[]) => surfacesPhrase(surfaces.slice(0, NAMED_CARRIERS));

/** One plain sentence on warm and cool, with the surfaces that carry it; as firm as views and colors allow. */
export function balanceSentence(of: {
  readonly verdict: BalanceVerdict;
  readonly firmness: Firmness;
  readonly carriers: Readonly<Record<TemperatureClass, readonly SurfaceId[]>>;
  /** Surfaces of some size that nothing is decided for: where a change would be easy. */
  readonly open: readonly SurfaceId[];
  /** Surfaces of some size without a finish: what they bring is not known. */
  readonly empty?: readonly SurfaceId[];
  /** Large surfaces are far apart in lightness: no quiet kitchen, whatever its colors. */
  readonly isStark?: boolean;
}): string {
  const whole = sentenceOfChosen(of);
  if (!of.empty?.length || of.verdict === 'nothing-chosen') return whole;
  return `So far: ${lowerFirst(whole)} Nothing is chosen yet for ${surfacesPhrase(of.empty).text}.`;
}

function sentenceOfChosen(of: Parameters<typeof balanceSentence>[0]): string {
  const { verdict, firmness, carriers } = of;
  const open =
    of.open.length > 0 ? `; ${phrase(of.open).text} ${phrase(of.open).plural ? 'are' : 'is'} still open` : '';
  if (firmness === 'open') {
    return 'Cannot tell from here whether warm and cool balance: the colors are not known well enough. Compare the samples together.';
  }
  const may = firmness === 'may';
  const is = may ? 'may be' : 'is';
  const warmSide = [...carriers.warm, ...carriers.leaning.filter((s) => !carriers.warm.includes(s))];
  switch (verdict) {
    case 'lacks-warm': {
      const who = carriers.cool.length > 0 ? `: ${phrase(carriers.cool).text}` : '';
      return `Most of what you see ${is} cool or gray${who}. One warm surface would settle it${open}.`;
    }
    case 'lacks-cool': {
      const who = warmSide.length > 0 ? `: ${phrase(warmSide).text}` : '';
      return `Everything ${may ? 'may lean' : 'leans'} warm${who}. A cooler or cleaner surface would rest the eye${open}.`;
    }
    case 'muted':
      if (of.isStark)
        return `Light against dark in near-neutral colors: ${may ? 'little' : 'nothing'} in it leans far to warm or cool.`;
      return `A quiet, near-neutral kitchen${may ? ' by and large' : ''}: ${may ? 'little' : 'nothing'} in it leans far to warm or cool.`;
    case 'nothing-chosen':
      return 'Nothing is chosen yet, so there is no warm or cool to weigh.';
    case 'balanced':
      return balanced(warmSide, carriers.cool, may);
  }
}

function balanced(warm: readonly SurfaceId[], cool: readonly SurfaceId[], may: boolean): string {
  const hold = may ? 'may hold' : 'hold';
  if (warm.length > 0 && cool.length > 0) {
    const w = phrase(warm);
    const c = phrase(cool);
    return `Warm and cool ${hold} each other: ${w.text} ${w.plural ? 'bring' : 'brings'} the warmth, ${c.text} the cool.`;
  }
  if (warm.length > 0) {
    const w = phrase(warm);
    return `${sentenceCase(w.text)} ${may ? 'may bring' : w.plural ? 'bring' : 'brings'} the warmth; the rest stays quiet.`;
  }
  if (cool.length > 0) {
    const c = phrase(cool);
    return `${sentenceCase(c.text)} ${may ? 'may bring' : c.plural ? 'bring' : 'brings'} the cool; the rest is quiet enough.`;
  }
  return `Warm and cool ${may ? 'may be' : 'are'} in balance; no single surface carries either.`;
}
