import { useState } from 'react';
import { flushSync } from 'react-dom';
import type { Shortlist } from '../../engine/judge/shortlist/types';
import type { WhyPoint } from '../../engine/judge/shortlist/why';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { Choices } from '../parts/Choices';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { SHORTLIST } from '../words/shortlist';
import { FilterFields } from './FilterFields';
import { FinishBox } from './FinishBox';
import { NO_FILTERS, passes } from './finish-filters';
import { type ShortlistOrder, sectionsOf } from './shortlist-order';
import { useFacts } from './use-facts';
import { WhyPart } from './WhyPart';

/** A shortlist on screen. */
export interface ShortlistView {
  readonly list: Shortlist;
  readonly order: ShortlistOrder;
  /** The list would now stand in another order. */
  readonly isOrderOld: boolean;
  /** The best are being judged in their place. */
  readonly isJudging: boolean;
  readonly onOrderAgain: () => void;
  readonly readWhy: (finish: string) => Promise<readonly WhyPoint[] | null>;
}

interface ShortlistListProps {
  readonly view: ShortlistView;
  readonly library: readonly Finish[];
  /** The same finishes as a plain library has them, for who wants that. */
  readonly candidates: readonly Finish[];
  readonly chosen: string;
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

type OrderId = keyof typeof SHORTLIST.orders;
const ORDERS: readonly { readonly id: OrderId; readonly name: string }[] = [
  { id: 'fit', name: SHORTLIST.orders.fit },
  { id: 'library', name: SHORTLIST.orders.library },
];

/** Every finish for a surface: what goes with all that is settled in rank order, what may not, and what does not, each with its reason. */
export function ShortlistList({ view, library, candidates, chosen, paintOf, onChoose, onPoint }: ShortlistListProps) {
  const { list } = view;
  const [filters, setFilters] = useState(NO_FILTERS);
  const [order, setOrder] = useState<OrderId>('fit');
  const [showsNotMade, setShowsNotMade] = useState(false);
  const [asked, setAsked] = useState<Finish | null>(null);
  useFacts(library);
  const notMade = list.rejected.filter(({ code }) => code === 'not-made-for-it');
  // What lies there, and what one typed in oneself, is always in the list.
  const isUnfit = new Set(
    notMade.filter(({ finish, is_laid }) => !is_laid && !finish.startsWith('OWN-')).map(({ finish }) => finish),
  );
  const judged = library.filter(({ id }) => showsNotMade || !isUnfit.has(id));
  const ofOrder = order === 'fit' ? judged : candidates;
  const shown = ofOrder.filter((finish) => passes(finish, filters));
  const sections =
    order === 'fit'
      ? sectionsOf(view.order, list, new Map(shown.map((finish) => [finish.id, finish])))
      : [{ id: 'library', title: null, rows: shown.map((finish) => ({ finish })) }];

  if (asked) {
    return (
      <WhyPart
        finish={asked}
        list={list}
        paint={paintOf(asked, true)}
        readWhy={view.readWhy}
        onPoint={onPoint}
        onLay={() => onChoose(asked)}
        onBack={() => {
          flushSync(() => setAsked(null));
          document.querySelector<HTMLElement>(`.finish-list [data-finish="${CSS.escape(asked.id)}"]`)?.focus();
        }}
      />
    );
  }
  return (
    <div className="library">
      <div className="library-tools">
        <Choices label={SHORTLIST.order} choices={ORDERS} chosen={order} onChoose={setOrder} />
        <FilterFields finishes={judged} filters={filters} onFilters={setFilters}>
          {notMade.length > 0 && (
            <label className="check">
              <input type="checkbox" checked={showsNotMade} onChange={() => setShowsNotMade(!showsNotMade)} />
              {SHORTLIST.notMade(notMade.length)}
            </label>
          )}
        </FilterFields>
        <p className="small quiet library-count" role="status">
          {DRAWER.count(shown.length, ofOrder.length)}. {view.isJudging && SHORTLIST.judging}
        </p>
      </div>
      <div className="shortlist-main">
        {order === 'fit' && (
          <div className="shortlist-head small">
            <p>{list.held_words}</p>
            {view.isOrderOld && (
              <p className="shortlist-again">
                {SHORTLIST.changed}{' '}
                <button type="button" className="button button-outlined" onClick={view.onOrderAgain}>
                  {SHORTLIST.again}
                </button>
              </p>
            )}
          </div>
        )}
        {shown.length === 0 ? (
          <p className="library-none">{DRAWER.none}</p>
        ) : (
          <FinishBox
            sections={sections}
            chosen={chosen}
            paintOf={paintOf}
            onChoose={onChoose}
            onPoint={onPoint}
            onWhy={setAsked}
          />
        )}
      </div>
    </div>
  );
}
