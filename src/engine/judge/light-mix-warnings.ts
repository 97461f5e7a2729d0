import { differenceParts } from '../color/difference';
import { chromaOf, hueDegOf } from '../color/lab';
import type { Lab } from '../color/types';
import type { SurfaceId } from '../surface';
import type { Warning } from './assessment';
import { BOUNCE } from './bounce';
import type { JudgeInput } from './input';
import { groupedBy } from './installed-faults';
import { AS_INSTALLED, oneDecimal } from './number-words';
import { isFitting } from './sample-color';
import { inDecisionOrder, joined, surfaceName, surfacesPhrase } from './surface-words';
import { mainReading } from './view-weights';

/** A place in which the lights mix to another white than on the counter. */
interface MixedPlace {
  readonly surface: SurfaceId;
  readonly white: Lab<'D65-2'>;
  readonly chromaPart: number;
}

const WHITE: Lab<'D65-2'> = { l: 100, a: 0, b: 0 };

const MIXES: Readonly<Record<JudgeInput['lights'], string>> = {
  one: 'one light',
  daylight: 'light from the sky and from the ground outside',
  'daylight-and-lamps': 'daylight and lamps',
  lamps: 'lamps of different color',
};

/** Colors named in the sentence: the strongest are enough to see what happens. */
const MOST_COLORS = 2;

/**
 * One note for the whole kitchen where lights of different color burn together and whites read differently from place to
 * place: the lights' doing, which no change of finish takes away.
 */
export function lightMixWarnings(input: JudgeInput): Warning[] {
  if (input.lights === 'one') return [];
  const places = mixedPlaces(input).sort((x, y) => y.chromaPart - x.chromaPart);
  const [worst] = places;
  if (!worst) return [];
  const colors = groupedBy(places, ({ white }) => whiteWord(white)).slice(0, MOST_COLORS);
  const read = colors.map((group) => `${whiteWord(group[0]!.white)} ${where(group)}`);
  const mix = input.lights === 'daylight' && input.burning.hasSun ? 'sun and sky' : MIXES[input.lights];
  return [
    {
      code: 'light-shift',
      severity: 'note',
      surfaces: surfacesOf(places),
      text: `The light here is a mix of ${mix}: beside a white on the counter, a white reads ${joined(read)}. That is the light, no finish.`,
      why:
        `Were every surface gray, a perfect white on the ${surfaceName(worst.surface).toLowerCase()} would read a* ` +
        `${worst.white.a.toFixed(1)}, b* ${worst.white.b.toFixed(1)}, a chroma part of ${oneDecimal(worst.chromaPart)} CIEDE2000 ` +
        `(note from ${BOUNCE.note}, the published limit for a whole difference), ${AS_INSTALLED}. Eyes adapt to each place in ` +
        'part, so it may look less than that.',
      basis: 'installed',
      holds_in: null,
    },
  ];
}

/** A long list says no more than its strongest. */
const NAMED_PLACES = 3;

const where = (group: readonly MixedPlace[]): string =>
  group.length > NAMED_PLACES
    ? `in many places, most on ${surfacesPhrase([group[0]!.surface]).text}`
    : `on ${surfacesPhrase(surfacesOf(group)).text}`;

const surfacesOf = (places: readonly MixedPlace[]): SurfaceId[] => inDecisionOrder(places.map((p) => p.surface));

const mixedPlaces = (input: JudgeInput): MixedPlace[] =>
  input.surfaces.flatMap((s) => {
    // The counter's light is what all else is held against.
    if (isFitting(s.surface) || s.surface === 'counter') return [];
    const reading = mainReading(s);
    if (!reading) return [];
    const chromaPart = differenceParts(WHITE, reading.lightWhite).chroma;
    return chromaPart >= BOUNCE.note ? [{ surface: s.surface, white: reading.lightWhite, chromaPart }] : [];
  });

/** Hue angles up to which a tinted white has a plain color word, degrees. Our judgment. */
const HUES: readonly (readonly [until: number, word: string])[] = [
  [30, 'pink'],
  [80, 'orange'],
  [115, 'yellow'],
  [200, 'green'],
  [290, 'blue'],
  [340, 'violet'],
  [360, 'pink'],
];

/** Below this chroma the word is softened. Our judgment. */
const FULL_CHROMA = 8;

function whiteWord(white: Lab<'D65-2'>): string {
  const hue = hueDegOf(white);
  const word = HUES.find(([until]) => hue <= until)![1];
  return chromaOf(white) < FULL_CHROMA ? `a little ${word}` : word;
}
