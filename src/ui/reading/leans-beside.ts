import type { Lab } from '../../engine/color/types';
import type { FinishClass } from '../../engine/finish/types';
import type { AssessedSurface, ComponentRecord, LabTriple } from '../../engine/judge/assessment';
import { compareWords } from '../../engine/judge/compare-words';
import { type Lean, type LeanSide, leanBeside } from '../../engine/judge/lean';
import { leanSentence } from '../../engine/judge/lean-sentence';
import { withTint } from '../../engine/judge/place-tint';
import { wholeAsWhite } from '../../engine/judge/sample-color';
import type { Phrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { COMPARISON_WHITES, type ComparisonWhite, laidWhite } from '../../kitchen/study/held-whites';
import { BESIDE } from '../words/beside';
import { componentPhrase, surfacesPhrase } from '../words/engine-words';
import { ROLE_WORDS } from '../words/finishes';
import { HELD } from '../words/held';
import { capital, percent } from '../words/numbers';
import { retold } from '../words/spoken';
import { seenPlaces } from './seen-places';

/** What a surface is held beside. */
export type BesideChoice = ComparisonWhite | SurfaceId;

interface ToldLean {
  /** What leans: the whole or a part, as a sample or as installed. */
  readonly of: string;
  readonly sentence: string;
  readonly lean: Lean;
}

const isWhite = (choice: string): choice is ComparisonWhite =>
  (COMPARISON_WHITES as readonly string[]).includes(choice);

/** "neutral white", "the wall". */
export const besideWords = (choice: BesideChoice): string =>
  isWhite(choice) ? HELD.whites[choice].toLowerCase() : surfacesPhrase([choice]).text;

/** How a surface leans beside a white, or beside another surface: the whole and its parts as samples, the whole as installed. */
export function leansBeside(
  surface: AssessedSurface,
  beside: AssessedSurface | ComparisonWhite,
  classOf: (finish: string) => FinishClass,
): readonly ToldLean[] {
  const own = asWhiteOf(surface, classOf);
  const other = sideBeside(beside, classOf);
  const place = seenPlaces(surface)[0];
  const there = place && sideInPlace(beside, other, place.place_white_lab_d65);
  const told = (of: string, lean: Lean, who: Phrase, isInstalled: boolean): ToldLean => {
    const samples = [[surface.surface], typeof beside === 'string' ? [] : [beside.surface]];
    const compare = compareWords(isInstalled ? BESIDE.inThisLight : BESIDE.byTheWindow, ...samples);
    const words = { own: who.text, plural: who.plural, beside: besideWords(nameOf(beside)), compare };
    return { of, lean, sentence: retold(leanSentence(lean, words)) };
  };
  const whole = surfacesPhrase([surface.surface]);
  const parts = surface.components.length > 1 ? surface.components : [];
  return [
    told(BESIDE.whole, leanBeside(sideOf(surface.average, own), other), whole, false),
    ...parts.map((part) =>
      told(
        BESIDE.part(capital(ROLE_WORDS[part.role]), percent(part.share)),
        leanBeside(sideOf(part, own), other),
        part.role === 'average' ? whole : componentPhrase(part.role, [surface.surface]),
        false,
      ),
    ),
    ...(place && there
      ? [told(BESIDE.installed, leanBeside(inPlace(sideOf(surface.average, own), place.lab_d65), there), whole, true)]
      : []),
  ];
}

const nameOf = (beside: AssessedSurface | ComparisonWhite): BesideChoice =>
  typeof beside === 'string' ? beside : beside.surface;

type AsWhite = Pick<LeanSide, 'mayBeWhite' | 'whiteChromaMax'>;

const asWhiteOf = (s: AssessedSurface, classOf: (finish: string) => FinishClass): AsWhite =>
  wholeAsWhite(s.surface, { class: classOf(s.finish), components: s.components });

const sideOf = (part: ComponentRecord, own: AsWhite): LeanSide => ({
  ...own,
  lab: labOf(part.lab_d65),
  uncertaintyDe00: part.uncertainty_de00,
});

function sideBeside(beside: AssessedSurface | ComparisonWhite, classOf: (finish: string) => FinishClass): LeanSide {
  if (typeof beside !== 'string') return sideOf(beside.average, asWhiteOf(beside, classOf));
  const finish = laidWhite(beside);
  const { labD65, uncertaintyDe00 } = finish.components[0]!;
  return { ...wholeAsWhite('wall', finish), lab: labD65, uncertaintyDe00 };
}

const inPlace = (side: LeanSide, lab: LabTriple): LeanSide => ({ ...side, sample: side.lab, lab: labOf(lab) });

/** A white is held where the surface is; another surface is where it is seen most. Null before its light is known. */
function sideInPlace(
  beside: AssessedSurface | ComparisonWhite,
  sample: LeanSide,
  placeWhite: LabTriple,
): LeanSide | null {
  if (typeof beside === 'string') {
    return { ...sample, sample: sample.lab, lab: withTint(sample.lab, labOf(placeWhite)) };
  }
  const place = seenPlaces(beside)[0];
  return place ? inPlace(sample, place.lab_d65) : null;
}

const labOf = ([l, a, b]: LabTriple): Lab<'D65-2'> => ({ l, a, b });
