import { hueApartDeg } from '../../../engine/color/hue-apart';
import { chromaOf, yFromLightness } from '../../../engine/color/lab';
import type { Lab } from '../../../engine/color/types';
import { averageComponent } from '../../../engine/finish/average';
import type { Warning } from '../../../engine/judge/assessment';
import { temperatureClass } from '../../../engine/judge/temperature-class';
import { undertoneOf } from '../../../engine/naming/undertone';
import type { SurfaceId } from '../../../engine/surface';
import { layFinish } from '../lay-finish';
import { libraryOf } from '../scheme';
import type { JudgedOption } from './judged-option';
import { type LibraryChange, NO_CHOICE } from './library-changes';

/** Less than this share of a tint is not worth a trial: no other finish there takes the tint away. Our judgment. */
const LEAST_SOURCE = 0.2;

/**
 * Whether a change lies where a warning could be cured: on a surface it names; of a lack anywhere; of a tint on what throws it, for
 * where it shows a place tints whatever hangs there.
 */
function isAbout({ held }: JudgedOption, warning: Warning, { surfaces }: Pick<LibraryChange, 'surfaces'>): boolean {
  if (isLack(warning)) return true;
  const isNamed = surfaces.some((surface) => warning.surfaces.includes(surface));
  if (warning.code !== 'tinted-by-bounce') return isNamed;
  if (isNamed) return false;
  return held.surfaces.some(
    ({ surface, installed }) =>
      warning.surfaces.includes(surface) &&
      installed.some(
        ({ tint_from }) =>
          tint_from.reduce((sum, from) => sum + (surfaces.includes(from.surface) ? from.share : 0), 0) >= LEAST_SOURCE,
      ),
  );
}

/** Whether all that a warning could be cured by is fixed or ordered; `present`: the surfaces of the room. */
export function isSettled(from: JudgedOption, warning: Warning, present: readonly SurfaceId[]): boolean {
  const { scheme } = from.option;
  const where = isLack(warning)
    ? present.filter((one) => !NO_CHOICE.includes(one))
    : warning.code === 'tinted-by-bounce'
      ? present.filter((one) => isAbout(from, warning, { surfaces: [one] }))
      : warning.surfaces;
  return where.length > 0 && where.every((one) => scheme[one].state === 'fixed' || scheme[one].state === 'ordered');
}

const isLack = ({ code }: Warning): boolean => code === 'lacks-warm' || code === 'lacks-cool';

/** Whether a change is worth a look for a warning: where it could be cured, and for a lack with something of what lacks. */
export function mayHelp(from: JudgedOption, warning: Warning, change: LibraryChange): boolean {
  if (!isAbout(from, warning, change)) return false;
  if (warning.code === 'undertones-pull-apart') return !leansMore(from, change);
  if (!isLack(warning)) return true;
  const laid = layFinish(libraryOf(change.project), change.option.scheme[change.surfaces[0]!]);
  if (!laid.ok) return false;
  const kinds = laid.value.components.map(({ labD65 }) => temperatureClass(labD65, () => undertoneOf(labD65).strength));
  return warning.code === 'lacks-warm'
    ? kinds.includes('warm')
    : kinds.some((kind) => kind === 'cool' || kind === 'neutral');
}

/**
 * Whether a change keeps the hue and leans further: the rules would take it for a color of its own, meant to contrast, but nobody
 * would take it for the cure of a lean. Our judgment.
 */
function leansMore(from: JudgedOption, { surfaces, color }: LibraryChange): boolean {
  const before = layFinish(libraryOf(from.project), from.option.scheme[surfaces[0]!]);
  if (!before.ok) return false;
  const was = averageComponent(before.value.components).labD65;
  return hueApartDeg(was, color) < SAME_HUE && chromaOf(color) > chromaOf(was);
}

/** Degrees within which two hues are the same lean. Our judgment. */
const SAME_HUE = 60;

/** Whether a change could take a tint away: it lies on what throws it, and throws less color. */
export function throwsLess(from: JudgedOption, warning: Warning, change: LibraryChange): boolean {
  if (!isAbout(from, warning, change)) return false;
  const before = layFinish(libraryOf(from.project), from.option.scheme[change.surfaces[0]!]);
  return before.ok && thrown(change.color) < thrown(averageComponent(before.value.components).labD65);
}

/** How much color a surface throws back, roughly: its chroma by the light it reflects. */
const thrown = (lab: Lab<'D65-2'>): number => chromaOf(lab) * yFromLightness(lab.l);
