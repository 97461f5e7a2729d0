import type { Assessment } from '../../engine/judge/assessment';
import type { DecisionState, SurfaceId } from '../../engine/surface';
import { scheduleItems } from '../../kitchen/schedule/items';
import type { Finish, Laying, Option } from '../../model/project';
import { surfaceName, surfacesPhrase } from '../words/engine-words';
import { PALETTE } from '../words/handover';
import { capital, listed } from '../words/numbers';

/** An item of the schedule that something is chosen for, as the pages show it. */
export interface HandoverItem {
  /** Its tag in the schedule. */
  readonly id: string;
  readonly surfaces: readonly SurfaceId[];
  /** Where it goes, in words. */
  readonly place: string;
  readonly finish: Finish;
  readonly laying: Laying;
  readonly state: DecisionState;
  readonly isGrout: boolean;
}

/** The finishes of an option under the tags and in the order of its schedule. */
export const handoverItems = (
  option: Option,
  library: readonly Finish[],
  present: readonly SurfaceId[],
): readonly HandoverItem[] =>
  scheduleItems(option, library, present).flatMap(({ id, kind, surfaces, finish, laying, state }) => {
    if (!finish) return [];
    const isGrout = kind === 'grout';
    const place = isGrout
      ? PALETTE.groutOf(listed(surfaces.map((surface) => surfaceName(surface).toLowerCase())))
      : capital(surfacesPhrase(surfaces).text.replace(/^the /, ''));
    return [{ id, surfaces, place, finish, laying: isGrout ? PLAIN : laying, state, isGrout }];
  });

const PLAIN: Laying = { layout: 'plain' };

/** Share of the view that an item has, 0-1; null where nobody has read the room. Grout is taken out of what it joins. */
export function viewShare(item: HandoverItem, assessment: Assessment | null): number | null {
  if (!assessment) return null;
  return assessment.surfaces
    .filter(({ surface }) => item.surfaces.includes(surface))
    .reduce((sum, { installed, components }) => {
      const seen = installed.reduce((total, { view_share }) => total + view_share, 0);
      const grout = components.filter(({ role }) => role === 'grout').reduce((total, { share }) => total + share, 0);
      return sum + seen * (item.isGrout ? grout : 1 - grout);
    }, 0);
}
