import { SURFACES, type SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import { isTiled } from '../../model/laying';
import { groutTag, TAG_OF } from '../../model/order/item-tags';
import { asBought } from '../../model/order/own-supply';
import { STAGE_OF, STAGES } from '../../model/order/stages';
import type { Finish, Option, Placement } from '../../model/project';
import type { PurchaseKind } from '../../model/quantity/usual-waste';
import { purchaseKind, stageOfItem } from './purchase-kind';
import type { ScheduleItem } from './types';

/** Joints that need a filler: of boards there are none. */
const wantsGrout = (finish: Finish, { laying }: Placement): boolean => isTiled(finish, laying);

/** What is laid in pieces in another way is another item: its waste, its joints and its start are its own. */
const layingKey = (kind: PurchaseKind, { laying }: Placement): string =>
  kind === 'tiles' || kind === 'boards'
    ? JSON.stringify([
        laying.layout,
        laying.joint_mm,
        laying.grout,
        laying.direction_deg ?? 0,
        laying.start ?? 'centered',
      ])
    : '';

/**
 * What an option orders, in the order of installing: surfaces of one finish that are bought alike and put in together are one item,
 * whichever of them are decided already: it is open as long as one of them is. What stays and what is ordered stand apart. The grout of
 * what is tiled is an item, too. What is counted (sinks, taps) is one of its own each, as is what nothing is chosen for.
 */
export function scheduleItems(
  option: Option,
  library: readonly Finish[],
  present: readonly SurfaceId[],
): readonly ScheduleItem[] {
  const byId = new Map(library.map((finish) => [finish.id, finish]));
  const items = new Map<string, ScheduleItem>();
  const add = (key: string, item: ScheduleItem) => {
    const known = items.get(key);
    if (!known) return items.set(key, item);
    const state = item.state === 'open' ? 'open' : known.state;
    return items.set(key, { ...known, state, surfaces: [...known.surfaces, ...item.surfaces] });
  };
  for (const surface of SURFACES.filter((one) => present.includes(one))) {
    const placement = option.scheme[surface];
    const { laying, state } = placement;
    const listed = byId.get(placement.finish);
    const said = option.items?.find((one) => one.item === TAG_OF[surface] && one.finish === listed?.id);
    const finish = listed && asBought(listed, said);
    if (!finish || isEmpty(placement)) {
      const stage = STAGE_OF[surface];
      add(surface, { id: TAG_OF[surface], kind: 'count', surfaces: [surface], finish: null, laying, state, stage });
      continue;
    }
    const kind = purchaseKind(finish, laying, surface);
    const stage = stageOfItem(surface, kind);
    const alone = kind === 'count' ? surface : '';
    const settled = state === 'decided' ? 'open' : state;
    const key = [finish.id, kind, stage, settled, alone, layingKey(kind, placement)].join(' ');
    add(key, { id: TAG_OF[surface], kind, surfaces: [surface], finish, laying, state, stage });
    const grout = laying.grout === undefined ? undefined : byId.get(laying.grout);
    if (grout && wantsGrout(finish, placement)) {
      const filler = {
        id: groutTag(surface),
        kind: 'grout',
        surfaces: [surface],
        finish: grout,
        laying,
        state,
        stage,
      } as const;
      add([grout.id, 'grout', stage, settled].join(' '), filler);
    }
  }
  const order = ({ stage }: ScheduleItem) => STAGES.indexOf(stage);
  return [...items.values()].sort((a, b) => order(a) - order(b));
}
