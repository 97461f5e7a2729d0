import type { Assessment } from '../../engine/judge/assessment';
import { type DecisionState, SURFACES, type SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import { groutTag, TAG_OF } from '../../model/order/item-tags';
import type { Finish, Laying, Option } from '../../model/project';
import { surfaceName, surfacesPhrase } from '../words/engine-words';
import { PALETTE } from '../words/handover';
import { capital } from '../words/numbers';

/** One finish that is ordered as one: where it goes, and what one calls it by on every page. */
export interface HandoverItem {
  /** Its tag: that of its first surface, with a G behind for grout. */
  readonly id: string;
  readonly surfaces: readonly SurfaceId[];
  /** Where it goes, in words. */
  readonly place: string;
  readonly finish: Finish;
  readonly laying: Laying;
  readonly state: DecisionState;
  readonly isGrout: boolean;
}

/** Surfaces that are bought in one go where they have the same finish. */
const BOUGHT_TOGETHER: readonly (readonly SurfaceId[])[] = [
  ['counter', 'island-counter', 'upstand'],
  ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'],
  ['wall', 'ceiling', 'frame'],
];

/** The finishes of an option as they are ordered, in the order of deciding; grout after what it joins. */
export function handoverItems(
  option: Option,
  library: readonly Finish[],
  present: readonly SurfaceId[],
): readonly HandoverItem[] {
  const taken = new Set<SurfaceId>();
  return SURFACES.flatMap((surface) => {
    const placement = option.scheme[surface];
    if (taken.has(surface) || !present.includes(surface) || isEmpty(placement)) return [];
    const finish = library.find(({ id }) => id === placement.finish);
    if (!finish) return [];
    const together = BOUGHT_TOGETHER.find((group) => group.includes(surface)) ?? [surface];
    const surfaces = together.filter((one) => {
      const other = option.scheme[one];
      return present.includes(one) && other.finish === placement.finish && other.state === placement.state;
    });
    for (const one of surfaces) taken.add(one);
    const { state, laying } = placement;
    const item = { id: TAG_OF[surfaces[0]!], surfaces, finish, laying, state };
    const grout = library.find(({ id }) => id === laying.grout);
    const place = capital(surfacesPhrase(surfaces).text.replace(/^the /, ''));
    return [
      { ...item, place, isGrout: false },
      ...(grout
        ? [
            {
              ...item,
              id: groutTag(surfaces[0]!),
              place: PALETTE.groutOf(surfaceName(surface)),
              finish: grout,
              laying: PLAIN,
              isGrout: true,
            },
          ]
        : []),
    ];
  });
}

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
