import { ArrowDownUp, Plus, Upload } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { LIBRARIES, RANGE } from '../words/libraries';
import { PRICE, priceKindWords } from '../words/price';
import { reread } from '../words/spoken';
import { ChosenBar } from './ChosenBar';
import type { PaintOf } from './library-props';
import { pricesApart } from './price-order';
import { RangeFields } from './RangeFields';
import { RangeTable } from './RangeTable';
import { RANGE_ORDERS, rangeFilterCount } from './range-filters';
import type { RangeLook } from './range-look';
import type { LibraryEditor } from './use-editor';

interface RangeListProps {
  readonly library: Library;
  readonly others: readonly Library[];
  /** What passes the filters, in order. */
  readonly shown: readonly Finish[];
  /** They are in order, or left out, by numbers that are only near for now. */
  readonly isNear: boolean;
  readonly editor: LibraryEditor;
  readonly paintOf: PaintOf;
  readonly look: RangeLook;
  readonly onLook: (change: (before: RangeLook) => RangeLook) => void;
  readonly onEdit: (id: string) => void;
  readonly onAdd: () => void;
  /** Null where a file cannot be imported into it. */
  readonly onImport: (() => void) | null;
}

const ORDERS = reread(() => RANGE_ORDERS.map((order) => [order, RANGE.orders[order]] as const));

/** The finishes of a library, what is shown of them, and what is done with several at once. */
export function RangeList(props: RangeListProps) {
  const { library, others, shown, isNear, editor, paintOf, look, onLook, onEdit, onAdd, onImport } = props;
  const [showsFilters, setShowsFilters] = useState(false);
  const { filters, order } = look;
  const set = (change: Partial<RangeLook>) => onLook((before) => ({ ...before, ...change }));
  const chosen = useMemo(
    () => library.finishes.filter(({ id }) => look.chosen.ids.has(id)),
    [library.finishes, look.chosen],
  );
  const apart = useMemo(() => (order === 'price' ? pricesApart(shown) : null), [order, shown]);
  return (
    <>
      <div className="range-tools">
        <label className="field range-search">
          <span className="label">{RANGE.search}</span>
          <input
            type="search"
            className="input"
            value={filters.search}
            placeholder={RANGE.searchHint}
            onChange={(event) => set({ filters: { ...filters, search: event.target.value } })}
          />
        </label>
        <button
          type="button"
          className="button button-outlined"
          aria-expanded={showsFilters}
          onClick={() => setShowsFilters(!showsFilters)}
        >
          {RANGE.filters(rangeFilterCount(filters))}
        </button>
        <div className="range-order">
          <Menu label={RANGE.order} value={order} choices={ORDERS} onChoose={(one) => set({ order: one })} />
          <button
            type="button"
            className="button button-outlined"
            aria-pressed={look.isDown}
            aria-label={RANGE.turn}
            title={RANGE.turn}
            onClick={() => set({ isDown: !look.isDown })}
          >
            <ArrowDownUp className="icon" aria-hidden="true" />
          </button>
        </div>
        <div className="range-adds">
          {onImport && (
            <button type="button" className="button button-outlined" onClick={onImport}>
              <Upload className="icon" aria-hidden="true" />
              {LIBRARIES.importFile}
            </button>
          )}
          <button type="button" className="button button-outlined" onClick={onAdd}>
            <Plus className="icon" aria-hidden="true" />
            {RANGE.add}
          </button>
        </div>
      </div>
      {showsFilters && (
        <RangeFields finishes={library.finishes} filters={filters} onFilters={(next) => set({ filters: next })} />
      )}
      {chosen.length > 0 ? (
        <ChosenBar library={library} chosen={chosen} others={others} editor={editor} onLook={onLook} />
      ) : (
        <p className="range-count small quiet" role="status">
          {RANGE.count(shown.length, library.finishes.length)}
          {isNear && ` ${RANGE.near}`}
        </p>
      )}
      {apart && (
        <p className="range-count small quiet" role="status">
          {PRICE.apart(priceKindWords(apart.first), apart.others)}
        </p>
      )}
      {shown.length === 0 ? (
        <p className="range-none">{library.finishes.length === 0 ? RANGE.empty : RANGE.none}</p>
      ) : (
        <RangeTable shown={shown} paintOf={paintOf} look={look} onLook={onLook} onEdit={onEdit} />
      )}
    </>
  );
}
