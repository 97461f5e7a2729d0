import type { Island } from '../../model/kitchen';
import { KITCHEN } from '../words/kitchen';
import { ISLAND_LENGTHS } from './kitchen-lengths';
import { type KitchenFormProps, LengthFields } from './LengthFields';
import { NumberField } from './NumberField';
import { PickField } from './PickField';

/** The island or peninsula: its place and size, the seats, where its counter reaches the floor. */
export function IslandForm(form: KitchenFormProps) {
  const { kitchen, unit, onKitchen } = form;
  const { island, room } = kitchen;
  if (!island) return <p>{KITCHEN.noIsland}</p>;
  const put = (next: Island, continues = false) => onKitchen({ ...kitchen, island: next }, continues);
  // A peninsula begins at its wall: only what is free is asked.
  const lengths = ISLAND_LENGTHS.filter(([key]) => key !== 'x' || !island.joined);
  return (
    <>
      <LengthFields
        {...form}
        lengths={lengths.map(([key, label]) => ({
          path: `island.${key}`,
          label,
          read: () => island[key],
          most: () => (key === 'x' || key === 'width' ? room.width : room.depth),
          write: (_, mm) => ({
            ...kitchen,
            island: {
              ...island,
              [key]: mm,
              ...(key === 'width' && island.joined === 'right' ? { x: room.width - mm } : {}),
            },
          }),
        }))}
      />
      <div className="room-fields">
        <NumberField
          label={KITCHEN.stools}
          value={island.stools}
          basis={kitchen}
          onValue={(stools) => put({ ...island, stools })}
        />
        <PickField
          label={KITCHEN.waterfall}
          as="menu"
          words={KITCHEN.waterfalls}
          chosen={island.waterfall}
          unit={unit}
          basis={kitchen}
          onPick={(waterfall) => put({ ...island, waterfall })}
        />
        <PickField
          label={KITCHEN.joined}
          as="menu"
          words={KITCHEN.joins}
          chosen={island.joined ?? 'none'}
          unit={unit}
          basis={kitchen}
          onPick={(to) => put(joinedTo(island, to, room.width))}
        />
      </div>
    </>
  );
}

/** The block moved to the wall it joins; one that lets go of a wall stays where it is until it is moved. */
function joinedTo(island: Island, to: 'none' | 'left' | 'right', roomWidth: number): Island {
  if (to === 'none') return { ...island, joined: null };
  return { ...island, joined: to, x: to === 'left' ? 0 : roomWidth - island.width };
}
