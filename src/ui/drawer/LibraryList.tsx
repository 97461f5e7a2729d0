import { useState } from 'react';
import type { Finish } from '../../model/project';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { DRAWER } from '../words/drawer';
import { FilterFields } from './FilterFields';
import { FinishBox } from './FinishBox';
import { NO_FILTERS, passes } from './finish-filters';
import { useFacts } from './use-facts';

interface LibraryListProps {
  readonly finishes: readonly Finish[];
  readonly chosen: string;
  /** `bake`: whether its pattern is wanted now, or only if it is there. */
  readonly paintOf: (finish: Finish, bake: boolean) => SwatchPaint;
  readonly onChoose: (finish: Finish) => void;
  /** Why there is nothing more to say of them. */
  readonly note?: string;
}

/** The finishes that can go on the surface, as the library has them. */
export function LibraryList({ finishes, chosen, paintOf, onChoose, note }: LibraryListProps) {
  const [filters, setFilters] = useState(NO_FILTERS);
  useFacts(finishes);
  const rows = finishes.filter((finish) => passes(finish, filters)).map((finish) => ({ finish }));
  return (
    <div className="library">
      <div className="library-tools">
        {note && <p className="small">{note}</p>}
        <FilterFields finishes={finishes} filters={filters} onFilters={setFilters} />
        <p className="small quiet library-count" role="status">
          {DRAWER.count(rows.length, finishes.length)}
        </p>
      </div>
      {rows.length === 0 ? (
        <p className="library-none">{DRAWER.none}</p>
      ) : (
        <FinishBox
          sections={[{ id: 'library', title: null, rows }]}
          chosen={chosen}
          paintOf={paintOf}
          onChoose={onChoose}
        />
      )}
    </div>
  );
}
