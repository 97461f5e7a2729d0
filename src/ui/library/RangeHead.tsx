import { ArrowDown, ArrowUp } from 'lucide-react';
import { useMemo } from 'react';
import type { Finish } from '../../model/project';
import { RANGE } from '../words/libraries';
import { toggleAll } from './choose-rows';
import type { RangeOrder } from './range-filters';
import type { RangeLook } from './range-look';

export const COLUMNS = ['choose', 'swatch', 'name', 'material', 'lrv', 'undertone', 'known', 'supply', 'tags'] as const;

/** Columns that the list can be put in order by. */
const ORDER_OF: { readonly [C in (typeof COLUMNS)[number]]?: RangeOrder } = {
  name: 'name',
  material: 'sheen',
  lrv: 'lrv',
  supply: 'price',
};

interface RangeHeadProps {
  readonly shown: readonly Finish[];
  readonly look: RangeLook;
  readonly onLook: (change: (before: RangeLook) => RangeLook) => void;
}

/** What the columns are called. Pressing one puts the list in its order, pressing it again the other way round. */
export function RangeHead({ shown, look, onLook }: RangeHeadProps) {
  const isFull = useMemo(() => shown.every(({ id }) => look.chosen.ids.has(id)), [shown, look.chosen]);
  const sort = (order: RangeOrder) =>
    onLook((before) => ({ ...before, order, isDown: before.order === order && !before.isDown }));
  const chooseAll = () =>
    onLook((before) => ({
      ...before,
      chosen: toggleAll(
        before.chosen,
        shown.map(({ id }) => id),
      ),
    }));
  return (
    <thead className="range-columns">
      <tr aria-rowindex={1} className="range-row small quiet">
        {COLUMNS.map((column) => {
          const order = ORDER_OF[column];
          const isSorted = order !== undefined && order === look.order;
          return (
            <th
              key={column}
              scope="col"
              className={`range-${column}`}
              aria-sort={isSorted ? (look.isDown ? 'descending' : 'ascending') : undefined}
            >
              {column === 'choose' ? (
                <>
                  <input
                    type="checkbox"
                    className="range-check"
                    aria-label={RANGE.chooseAll}
                    checked={isFull}
                    onChange={chooseAll}
                  />
                  <span className="range-all" aria-hidden="true">
                    {RANGE.chooseAll}
                  </span>
                </>
              ) : order ? (
                <button type="button" className="range-sort ring-inside" onClick={() => sort(order)}>
                  {RANGE.columns[column]}
                  {isSorted && <Arrow isDown={look.isDown} />}
                </button>
              ) : (
                <span className={column === 'swatch' ? 'hidden-visually' : undefined}>{RANGE.columns[column]}</span>
              )}
            </th>
          );
        })}
      </tr>
    </thead>
  );
}

const Arrow = ({ isDown }: { readonly isDown: boolean }) => {
  const Sign = isDown ? ArrowDown : ArrowUp;
  return <Sign className="icon range-arrow" aria-hidden="true" />;
};
