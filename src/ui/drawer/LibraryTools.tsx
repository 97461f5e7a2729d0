import { Choices } from '../parts/Choices';
import { DRAWER } from '../words/drawer';
import { SHORTLIST } from '../words/shortlist';
import { reread } from '../words/spoken';
import { FilterFields, type LibraryChoice } from './FilterFields';
import { filterCount, NO_FILTERS } from './finish-filters';
import { ALL, type LibraryLook, PROJECT, type ShownLibrary } from './shortlist-view';
import { WishFields, type WishFieldsProps } from './WishFields';
import { withWishesOf } from './wish-list';
import './library-fold.css';

export type Fold = 'filters' | 'wishes';

interface LibraryToolsProps {
  readonly look: LibraryLook;
  readonly onLook: (look: LibraryLook) => void;
  readonly library: ShownLibrary;
  readonly libraries: LibraryChoice;
  /** How many finishes the project has itself. */
  readonly own: number;
  /** Null where nothing is ranked. */
  readonly wishing: Omit<WishFieldsProps, 'finishes'> | null;
  readonly fold: Fold | null;
  readonly onFold: (fold: Fold | null) => void;
}

const ORDERS = reread(() => (['fit', 'library'] as const).map((id) => ({ id, name: SHORTLIST.orders[id] })));

/** One row: the search, the order, and what opens the filters and the wishes. */
export function LibraryTools({ look, onLook, libraries, own, wishing, fold, onFold }: LibraryToolsProps) {
  const { filters, order } = look;
  const offered = libraries.all.filter(({ id }) => !libraries.putAside.includes(id));
  const inThem = offered.reduce((sum, { finishes }) => sum + finishes.length, 0);
  const isRanked = wishing !== null && order === 'fit';
  const opener = (id: Fold, words: string) => (
    <button
      type="button"
      className="button button-outlined"
      aria-expanded={fold === id}
      data-fold={id}
      onClick={() => onFold(fold === id ? null : id)}
    >
      {words}
    </button>
  );
  return (
    <div className="library-tools">
      <input
        type="search"
        className="input library-search"
        aria-label={DRAWER.search}
        value={filters.search}
        placeholder={DRAWER.searchHint}
        onChange={(event) => onLook({ ...look, filters: { ...filters, search: event.target.value } })}
      />
      {offered.length > 0 && (
        <select
          className="select library-from"
          aria-label={DRAWER.from}
          value={offered.some(({ id }) => id === look.from) || look.from === PROJECT ? look.from : ALL}
          onChange={(event) => onLook({ ...look, from: event.target.value })}
        >
          <option value={ALL}>{DRAWER.fromAll(own + inThem)}</option>
          <option value={PROJECT}>{DRAWER.fromProject(own)}</option>
          {offered.map(({ id, name, finishes }) => (
            <option key={id} value={id}>
              {DRAWER.fromLibrary(name, finishes.length)}
            </option>
          ))}
        </select>
      )}
      {opener('filters', SHORTLIST.filters(filterCount(filters)))}
      {isRanked && opener('wishes', SHORTLIST.wishesSet(wishing.wishes.length))}
      {wishing && (
        <Choices
          label={SHORTLIST.order}
          choices={ORDERS}
          chosen={order}
          onChoose={(id) => onLook({ ...look, order: id })}
        />
      )}
    </div>
  );
}

/** For a button that goes once it was pressed; a field that one is in keeps the focus. */
function focusOpener(fold: Fold): void {
  if (document.activeElement instanceof HTMLButtonElement)
    document.querySelector<HTMLElement>(`.library-tools [data-fold="${fold}"]`)?.focus();
}

/** What is open of the tools, under their row. */
export function LibraryFold({ look, onLook, library, libraries, wishing, fold, onFold }: LibraryToolsProps) {
  const { filters, order, showsNotMade } = look;
  const isRanked = wishing !== null && order === 'fit';
  if (fold === 'wishes') return isRanked ? <WishFields {...wishing} finishes={library.all} /> : null;
  if (fold === null) return null;
  return (
    <FilterFields
      finishes={library.all}
      filters={filters}
      libraries={libraries}
      onFilters={(next) => {
        onLook({ ...look, filters: next });
        // What clears them goes with them.
        if (filterCount(next) === 0 && filterCount(filters) > 0) focusOpener('filters');
      }}
      onRank={
        isRanked
          ? () => {
              wishing.onWishes(withWishesOf(wishing.wishes, filters));
              onLook({ ...look, filters: { ...NO_FILTERS, search: filters.search } });
              onFold('wishes');
              focusOpener('wishes');
            }
          : null
      }
    >
      {(isRanked || wishing === null) && library.notMade > 0 && (
        <label className="check">
          <input
            type="checkbox"
            checked={showsNotMade}
            onChange={() => onLook({ ...look, showsNotMade: !showsNotMade })}
          />
          {SHORTLIST.notMade(library.notMade)}
        </label>
      )}
    </FilterFields>
  );
}
