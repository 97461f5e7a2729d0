import type { Provenance } from '../../engine/finish/types';
import type { Finish } from '../../model/project';
import { FilterFields } from '../drawer/FilterFields';
import { filterCount } from '../drawer/finish-filters';
import { Menu } from '../drawer/Menu';
import { PROVENANCE_SHORT } from '../words/finishes';
import { RANGE } from '../words/libraries';
import { capital } from '../words/numbers';
import { NO_RANGE_FILTERS, type RangeFilters, tagsOf } from './range-filters';

interface RangeFieldsProps {
  readonly finishes: readonly Finish[];
  readonly filters: RangeFilters;
  readonly onFilters: (filters: RangeFilters) => void;
}

/** What hides finishes of a library: as in the drawer, and by tag and by how they are known. */
export function RangeFields({ finishes, filters, onFilters }: RangeFieldsProps) {
  const known = [...new Set(finishes.map(({ provenance }) => provenance))];
  return (
    <div className="range-fields">
      <FilterFields
        finishes={finishes}
        filters={filters}
        onFilters={(next) =>
          // What clears its filters clears all.
          onFilters(
            filterCount(next) === 0 && filterCount(filters) > 0
              ? { ...NO_RANGE_FILTERS, search: filters.search }
              : { ...filters, ...next },
          )
        }
        onRank={null}
      >
        <Menu<Provenance | 'all'>
          label={RANGE.provenance}
          value={filters.provenance}
          choices={[
            ['all', RANGE.anyProvenance],
            ...known.map((one) => [one, capital(PROVENANCE_SHORT[one])] as const),
          ]}
          onChoose={(provenance) => onFilters({ ...filters, provenance })}
        />
        <Menu<string>
          label={RANGE.tag}
          value={filters.tag}
          choices={[['', RANGE.anyTag], ...tagsOf(finishes).map((tag) => [tag, tag] as const)]}
          onChoose={(tag) => onFilters({ ...filters, tag })}
        />
      </FilterFields>
    </div>
  );
}
