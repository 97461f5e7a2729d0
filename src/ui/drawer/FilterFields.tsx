import type { ReactNode } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { SHEENS, type SheenId } from '../../model/sheens';
import { DRAWER } from '../words/drawer';
import { CLASS_WORDS, sheenChoice } from '../words/finishes';
import { bandWords } from '../words/price';
import { SHORTLIST } from '../words/shortlist';
import { type FinishFilters, filterCount, NO_FILTERS } from './finish-filters';
import { libraryValues } from './library-values';
import { Menu } from './Menu';
import { NumberText } from './NumberText';

/** Libraries kept beside the project, and which of them are not offered. */
export interface LibraryChoice {
  readonly all: readonly Library[];
  readonly putAside: readonly string[];
  /** Offers a library, or no longer. */
  readonly onOffer: (library: string) => void;
}

interface FilterFieldsProps {
  readonly finishes: readonly Finish[];
  readonly filters: FinishFilters;
  /** Absent where one looks through a library itself. */
  readonly libraries?: LibraryChoice;
  readonly onFilters: (filters: FinishFilters) => void;
  /** Ranks by them instead of hiding; null where nothing is ranked. */
  readonly onRank: (() => void) | null;
  /** What else hides or shows. */
  readonly children?: ReactNode;
}

/** What hides finishes of a list. */
export function FilterFields({ finishes, filters, libraries, onFilters, onRank, children }: FilterFieldsProps) {
  const set = (change: Partial<FinishFilters>) => onFilters({ ...filters, ...change });
  const { classes, prices, availabilities, tags } = libraryValues(finishes);
  return (
    <div className="library-fold">
      <div className="fold-fields">
        <Menu<FinishClass | 'all'>
          label={DRAWER.classFilter}
          value={filters.kind}
          choices={[['all', DRAWER.allClasses], ...classes.map((one) => [one, CLASS_WORDS[one]] as const)]}
          onChoose={(kind) => set({ kind })}
        />
        <div className="filter-range">
          <NumberText label={SHORTLIST.lrvFrom} value={filters.lrvFrom} onChange={(lrvFrom) => set({ lrvFrom })} />
          <NumberText label={SHORTLIST.lrvTo} value={filters.lrvTo} onChange={(lrvTo) => set({ lrvTo })} />
        </div>
        <Menu<SheenId | 'all'>
          label={SHORTLIST.sheen}
          value={filters.sheen}
          choices={[['all', SHORTLIST.anySheen], ...SHEENS.map((one) => [one.id, sheenChoice(one)] as const)]}
          onChoose={(sheen) => set({ sheen })}
        />
        <Menu<string>
          label={SHORTLIST.price}
          value={filters.price}
          choices={[['all', SHORTLIST.anyPrice], ...prices.map((one) => [one, bandWords(one)] as const)]}
          onChoose={(price) => set({ price })}
        />
        <Menu<string>
          label={SHORTLIST.available}
          value={filters.available}
          choices={[['all', SHORTLIST.anyAvailable], ...availabilities.map((one) => [one, one] as const)]}
          onChoose={(available) => set({ available })}
        />
        {libraries && (tags.length > 0 || filters.tag !== '') && (
          <Menu<string>
            label={DRAWER.tag}
            value={filters.tag}
            choices={[['', DRAWER.anyTag], ...withChosen(tags, filters.tag).map((one) => [one, one] as const)]}
            onChoose={(tag) => set({ tag })}
          />
        )}
      </div>
      {libraries && libraries.all.length > 0 && (
        <fieldset className="fold-row fold-libraries">
          <legend className="small quiet">{DRAWER.libraries}</legend>
          {libraries.all.map(({ id, name, finishes: its }) => (
            <label key={id} className="check">
              <input
                type="checkbox"
                checked={!libraries.putAside.includes(id)}
                onChange={() => libraries.onOffer(id)}
              />
              {DRAWER.libraryOf(name, its.length)}
            </label>
          ))}
        </fieldset>
      )}
      <div className="fold-row">
        {children}
        {filterCount(filters) > 0 && (
          <>
            {onRank && (
              <button type="button" className="button button-outlined" onClick={onRank}>
                {SHORTLIST.rankInstead}
              </button>
            )}
            <button
              type="button"
              className="button button-outlined"
              onClick={() => onFilters({ ...NO_FILTERS, search: filters.search })}
            >
              {SHORTLIST.clear}
            </button>
          </>
        )}
      </div>
    </div>
  );
}

/** With what is chosen, also where no finish has it any more. */
const withChosen = (values: readonly string[], chosen: string): readonly string[] =>
  chosen === '' || values.includes(chosen) ? values : [...values, chosen];
