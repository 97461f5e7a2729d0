import { differenceCiede2000, differenceParts } from '../../color/difference';
import { hueApartDeg } from '../../color/hue-apart';
import { wid } from '../../color/wid';
import type { SurfaceId } from '../../surface';
import { PAIR } from '../pair';
import type { SampleColor } from '../sample-color';
import { componentPhrase, type Phrase, sentenceCase, surfacesPhrase } from '../surface-words';
import { inDomainOfWhites, WHITES } from '../whites';
import { type Echo, echoBetween, isAtLeast, isNamed, majorColors } from './hues';
import { pairsAmong } from './places';
import type { RelationRule } from './rule';
import { finishesOf, mainColor, type SeenScheme, type SeenSurface } from './seen-scheme';
import type { EchoKind, Miss } from './types';

type Surfaces = readonly SurfaceId[];

const verb = (how: EchoKind, may: boolean): string =>
  `${may ? 'may ' : ''}${how === 'alike' ? 'look alike' : how === 'whites' ? 'agree as whites' : 'share a hue'}`;

const GONE: Readonly<Record<EchoKind, string>> = {
  alike: 'they do not look alike',
  whites: 'they do not agree as whites',
  hue: 'they share no hue',
};

/** Everything that lies on both sides, two by two. */
const meetings = (
  scheme: SeenScheme,
  one: Surfaces,
  other: Surfaces,
): readonly (readonly [SeenSurface, SeenSurface])[] =>
  finishesOf(scheme, one).flatMap((a) => finishesOf(scheme, other).map((b) => [a, b] as const));

const part = (color: SampleColor, surfaces: Surfaces): Phrase => componentPhrase(color.role, surfaces);

/** Who echoes whom, by the strongest echo of any two of their colors. */
export const echoRule: RelationRule<'echo'> = {
  propose(_, places) {
    return pairsAmong(places).flatMap(([a, b]) => {
      const echo = echoBetween(a.seen, b.seen);
      if (!echo) return [];
      const claim = { kind: 'echo', one: a.surfaces, other: b.surfaces, how: echo.how } as const;
      return [{ claim, numbers: numbersOf(echo) }];
    });
  },
  read({ one, other, how }, scheme) {
    const all = meetings(scheme, one, other);
    if (all.length === 0) return null;
    const missing = all.filter(([a, b]) => !isAtLeast(echoBetween(a, b)?.how ?? null, how));
    return {
      holds: missing.length === 0,
      words() {
        const [meeting] = missing;
        const [x, y] = [surfacesPhrase(one).text, surfacesPhrase(other).text];
        if (!meeting) return { here: `So do ${x} and ${y} here.`, by: { value: 0, unit: '', text: '' } };
        const by = missOf(meeting, how);
        const isWeaker = how === 'hue' && by.unit === 'CIEDE2000';
        return { here: isWeaker ? `Here ${by.text}.` : `Here ${GONE[how]}: ${by.text}.`, by };
      },
    };
  },
  say({ one, other, how }, numbers, may) {
    const [x, y] = [surfacesPhrase(one).text, surfacesPhrase(other).text];
    return `${sentenceCase(x)} and ${y} ${verb(how, may)}${reasonOf(how, numbers)}.`;
  },
  weaker: (claim) => (claim.how === 'alike' ? { ...claim, how: 'whites' } : null),
  open: ({ one, other, how }) =>
    `Whether ${surfacesPhrase(one).text} and ${surfacesPhrase(other).text} ${verb(how, false)} is too close to call.`,
};

const numbersOf = ({ how, one, other, numbers }: Echo): Record<string, number> => ({
  de00: numbers['de00']!,
  ...('d_wid' in numbers ? { d_wid: numbers['d_wid']! } : {}),
  ...(how === 'hue' ? { hue_apart_deg: hueApartDeg(one.lab, other.lab) } : {}),
});

function reasonOf(how: EchoKind, numbers: Readonly<Record<string, number>>): string {
  if (how === 'hue') return ` (${(numbers['hue_apart_deg'] ?? 0).toFixed(0)}° apart)`;
  if (how === 'whites' && 'd_wid' in numbers)
    return ` (${Math.abs(numbers['d_wid'] ?? 0).toFixed(1)} apart in whiteness)`;
  return '';
}

/** By how much an echo of its kind is missed where two surfaces meet. */
function missOf([a, b]: readonly [SeenSurface, SeenSurface], how: EchoKind): Miss {
  const [one, other] = [mainColor(a), mainColor(b)];
  if (how === 'whites' && inDomainOfWhites(one, other)) {
    const whiteness = Math.abs(wid(one.lab) - wid(other.lab));
    const text = `${whiteness.toFixed(1)} apart in whiteness, ${WHITES.whitenessLimit} would pass`;
    return { value: whiteness - WHITES.whitenessLimit, unit: 'whiteness', text };
  }
  if (how === 'hue') return hueMiss(a, b);
  const de00 = differenceCiede2000(one.lab, other.lab);
  const outside = how === 'whites' ? ', and not both are whites' : '';
  const text = `${de00.toFixed(1)} CIEDE2000 apart${outside}, ${PAIR.acceptable} would pass`;
  return { value: de00 - PAIR.acceptable, unit: 'CIEDE2000', text };
}

function hueMiss(a: SeenSurface, b: SeenSurface): Miss {
  const pairs = majorColors(a).flatMap((x) => majorColors(b).map((y) => [x, y] as const));
  const named = pairs.filter(([x, y]) => isNamed(x) && isNamed(y));
  if (named.length === 0) {
    const plain = pairs.some(([x]) => isNamed(x)) ? b : a;
    const { text } = surfacesPhrase([plain.surface]);
    const strength = Math.max(...majorColors(plain).map((color) => color.strength()));
    const missing = Math.max(0, PAIR.namedStrength - strength);
    return {
      value: missing,
      unit: 'undertone strength',
      text: `${text} is too near a plain white, gray or black to have a hue`,
    };
  }
  const [x, y] = named.reduce((best, pair) =>
    hueApartDeg(pair[0].lab, pair[1].lab) < hueApartDeg(best[0].lab, best[1].lab) ? pair : best,
  );
  const apart = hueApartDeg(x.lab, y.lab);
  if (apart > PAIR.echoHueMax) {
    const sides = `${part(x, [a.surface]).text} and ${part(y, [b.surface]).text}`;
    const text = `${sides} are ${apart.toFixed(0)}° of hue apart, ${PAIR.echoHueMax}° would pass`;
    return { value: apart - PAIR.echoHueMax, unit: 'degrees of hue', text };
  }
  const { chroma } = differenceParts(x.lab, y.lab);
  const text = `their hue is the same, but one is much stronger (${chroma.toFixed(1)} CIEDE2000 of chroma and hue, ${PAIR.echoChromaPartMax} would pass)`;
  return { value: chroma - PAIR.echoChromaPartMax, unit: 'CIEDE2000', text };
}

/** Who opposes whom: named hues of the main colors a quarter circle or more apart. */
export const oppositionRule: RelationRule<'opposition'> = {
  propose(_, places) {
    return pairsAmong(places.filter(({ isLarge }) => isLarge)).flatMap(([a, b]) => {
      const apart = opposedDeg(a.seen, b.seen);
      if (apart === null || apart < PAIR.opposedHueMin) return [];
      const claim = { kind: 'opposition', one: a.surfaces, other: b.surfaces } as const;
      return [{ claim, numbers: { hue_apart_deg: apart } }];
    });
  },
  read({ one, other }, scheme, { hue_apart_deg }) {
    const all = meetings(scheme, one, other);
    if (all.length === 0) return null;
    const apart = all.map(([a, b]) => opposedDeg(a, b));
    const least = apart.reduce<number | null>((low, x) => (x === null || low === null ? null : Math.min(low, x)), 180);
    return {
      holds: least !== null && least >= PAIR.opposedHueMin,
      words() {
        const [x, y] = [surfacesPhrase(one).text, surfacesPhrase(other).text];
        if (least === null) {
          const text = 'one of the two has no hue of its own here';
          return {
            here: `Here ${x} and ${y} do not oppose each other: ${text}.`,
            by: { value: PAIR.opposedHueMin, unit: 'degrees of hue', text },
          };
        }
        const text = `${least.toFixed(0)}° of hue apart here, ${(hue_apart_deg ?? 0).toFixed(0)}° there`;
        const does = least >= PAIR.opposedHueMin ? 'oppose' : 'do not oppose';
        return {
          here: `Here ${x} and ${y} ${does} each other: ${text}.`,
          by: { value: Math.max(0, PAIR.opposedHueMin - least), unit: 'degrees of hue', text },
        };
      },
    };
  },
  say({ one, other }, { hue_apart_deg }, may) {
    const [x, y] = [surfacesPhrase(one).text, surfacesPhrase(other).text];
    return `${sentenceCase(x)} and ${y} ${may ? 'may ' : ''}oppose each other in hue (${(hue_apart_deg ?? 0).toFixed(0)}° apart).`;
  },
  open: ({ one, other }) =>
    `Whether ${surfacesPhrase(one).text} and ${surfacesPhrase(other).text} oppose each other in hue is too close to call.`,
};

/** Degrees between the hues of two main colors; null where one has none with a name. */
function opposedDeg(a: SeenSurface, b: SeenSurface): number | null {
  const [one, other] = [mainColor(a), mainColor(b)];
  // The look-up of the undertone is the slow step: only where the hues could matter.
  const apart = hueApartDeg(one.lab, other.lab);
  return isNamed(one) && isNamed(other) ? apart : null;
}
