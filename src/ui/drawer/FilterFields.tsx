import { type ReactNode, useState } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { Finish } from '../../model/project';
import { DRAWER } from '../words/drawer';
import { CLASS_WORDS } from '../words/finishes';
import { SHORTLIST } from '../words/shortlist';
import { type FinishFilters, NO_FILTERS, SHEENS, type SheenId } from './finish-filters';
import { Menu } from './Menu';

interface FilterFieldsProps {
  readonly finishes: readonly Finish[];
  readonly filters: FinishFilters;
  readonly onFilters: (filters: FinishFilters) => void;
  /** What else hides or shows. */
  readonly children?: ReactNode;
}

/** Search and material, and the rest of the filters one step away. */
export function FilterFields({ finishes, filters, onFilters, children }: FilterFieldsProps) {
  const [isOpen, setOpen] = useState(false);
  const set = (change: Partial<FinishFilters>) => onFilters({ ...filters, ...change });
  const distinct = <T,>(values: readonly (T | undefined)[]): T[] => [...new Set(values)].filter((v) => v !== undefined);
  const classes = distinct(finishes.map((finish) => finish.class));
  const prices = distinct(finishes.map((finish) => finish.supply?.price_band)).sort();
  const availabilities = distinct(finishes.map((finish) => finish.supply?.availability));
  const isFiltered = filters !== NO_FILTERS && JSON.stringify(filters) !== JSON.stringify(NO_FILTERS);
  return (
    <>
      <label className="field">
        <span className="label">{DRAWER.search}</span>
        <input
          type="search"
          className="input"
          value={filters.search}
          placeholder={DRAWER.searchHint}
          onChange={(event) => set({ search: event.target.value })}
        />
      </label>
      <Menu<FinishClass | 'all'>
        label={DRAWER.classFilter}
        value={filters.kind}
        choices={[['all', DRAWER.allClasses], ...classes.map((one) => [one, CLASS_WORDS[one]] as const)]}
        onChoose={(kind) => set({ kind })}
      />
      <button type="button" className="button button-plain" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {SHORTLIST.more}
      </button>
      {isOpen && (
        <>
          <div className="filter-range">
            <NumberText label={SHORTLIST.lrvFrom} value={filters.lrvFrom} onChange={(lrvFrom) => set({ lrvFrom })} />
            <NumberText label={SHORTLIST.lrvTo} value={filters.lrvTo} onChange={(lrvTo) => set({ lrvTo })} />
          </div>
          <Menu<SheenId | 'all'>
            label={SHORTLIST.sheen}
            value={filters.sheen}
            choices={[['all', SHORTLIST.anySheen], ...SHEENS.map(({ id, words }) => [id, words] as const)]}
            onChoose={(sheen) => set({ sheen })}
          />
          <Menu<string>
            label={SHORTLIST.price}
            value={filters.price}
            choices={[['all', SHORTLIST.anyPrice], ...prices.map((one) => [one, one] as const)]}
            onChoose={(price) => set({ price })}
          />
          <Menu<string>
            label={SHORTLIST.available}
            value={filters.available}
            choices={[['all', SHORTLIST.anyAvailable], ...availabilities.map((one) => [one, one] as const)]}
            onChoose={(available) => set({ available })}
          />
          {children}
        </>
      )}
      {isFiltered && (
        <button type="button" className="button button-outlined" onClick={() => onFilters(NO_FILTERS)}>
          {SHORTLIST.clear}
        </button>
      )}
    </>
  );
}

interface NumberTextProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

const NumberText = ({ label, value, onChange }: NumberTextProps) => (
  <label className="field">
    <span className="label">{label}</span>
    <input
      className="input"
      inputMode="decimal"
      value={value}
      onChange={(event) => onChange(event.target.value)}
      size={3}
    />
  </label>
);
