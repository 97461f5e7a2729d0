import { ChevronLeft, Download, Pencil, Trash2 } from 'lucide-react';
import { useDeferredValue, useMemo, useRef, useState } from 'react';
import type { Library } from '../../model/library';
import { useNear } from '../drawer/use-facts';
import { finishCount, LIBRARIES } from '../words/libraries';
import { FileForm } from './FileForm';
import { FinishForm } from './FinishForm';
import { type LibraryDoors, type PaintOf, PROJECT_LIBRARY } from './library-props';
import { NameForm } from './NameForm';
import { RangeList } from './RangeList';
import { type RangeLook, START_OF_RANGE, shownOf } from './range-look';
import type { LibraryEditor } from './use-editor';

interface RangePaneProps {
  readonly library: Library;
  readonly others: readonly Library[];
  readonly editor: LibraryEditor;
  readonly paintOf: PaintOf;
  readonly onSave: LibraryDoors['onSave'];
  readonly onImport: () => void;
  /** To the list of libraries, where there is no room for both. */
  readonly onBack: () => void;
}

/** One library: its name and what can be done with all of it; its finishes, or the form of one of them. */
export function RangePane({ library, others, editor, paintOf, onSave, onImport, onBack }: RangePaneProps) {
  const [fold, setFold] = useState<'name' | 'file' | null>(null);
  /** The finish in the form; 'new' for one to come. */
  const [edited, setEdited] = useState<string | null>(null);
  const [look, setLook] = useState<RangeLook>(START_OF_RANGE);
  const { filters, order, isDown } = useDeferredValue(look);
  const isNear = useNear(library.finishes, order === 'lrv' || filters.lrvFrom !== '' || filters.lrvTo !== '');
  // biome-ignore lint/correctness/useExhaustiveDependencies: once the exact numbers are there they count
  const shown = useMemo(
    () => shownOf(library.finishes, { filters, order, isDown }),
    [library.finishes, filters, order, isDown, isNear],
  );
  const heading = useRef<HTMLHeadingElement>(null);
  const isProject = library.id === PROJECT_LIBRARY;
  const toggle = (one: 'name' | 'file') => setFold(fold === one ? null : one);
  const finish = library.finishes.find(({ id }) => id === edited) ?? null;
  const isForm = edited === 'new' || finish !== null;
  return (
    <section className="range" aria-label={library.name}>
      <div className="range-head" hidden={isForm}>
        <button type="button" className="button button-plain range-back" onClick={onBack}>
          <ChevronLeft className="icon" aria-hidden="true" />
          {LIBRARIES.allLibraries}
        </button>
        <div className="range-title">
          <h3 ref={heading} tabIndex={-1}>
            {library.name}
          </h3>
          <p className="small quiet">
            {finishCount(library.finishes.length)}
            {library.note && `. ${library.note}`}
          </p>
        </div>
        <div className="range-ways">
          {!isProject && (
            <button
              type="button"
              className="button button-outlined"
              aria-expanded={fold === 'name'}
              onClick={() => toggle('name')}
            >
              <Pencil className="icon" aria-hidden="true" />
              {LIBRARIES.rename}
            </button>
          )}
          <button
            type="button"
            className="button button-outlined"
            aria-expanded={fold === 'file'}
            onClick={() => toggle('file')}
          >
            <Download className="icon" aria-hidden="true" />
            {LIBRARIES.save}
          </button>
          {!isProject && (
            <button type="button" className="button button-outlined" onClick={() => void editor.remove(library)}>
              <Trash2 className="icon" aria-hidden="true" />
              {LIBRARIES.remove}
            </button>
          )}
        </div>
      </div>
      {fold === 'name' && !isForm && (
        <NameForm
          name={library.name}
          note={library.note}
          label={LIBRARIES.rename}
          onCancel={() => setFold(null)}
          onName={(name, note) => {
            setFold(null);
            heading.current?.focus();
            if (name !== library.name || note !== library.note) void editor.rename(library, name, note);
          }}
        />
      )}
      {fold === 'file' && !isForm && <FileForm library={library} onSave={onSave} />}
      {isForm ? (
        <FinishForm
          key={edited}
          library={library}
          finish={finish}
          shown={shown}
          editor={editor}
          paintOf={paintOf}
          onShow={setEdited}
          onBack={(id) => {
            setEdited(null);
            if (id !== null) setLook((before) => ({ ...before, active: id, takesFocus: true }));
          }}
        />
      ) : (
        <RangeList
          library={library}
          others={others}
          editor={editor}
          paintOf={paintOf}
          shown={shown}
          isNear={isNear}
          look={look}
          onLook={setLook}
          onEdit={setEdited}
          onAdd={() => setEdited('new')}
          onImport={isProject ? null : onImport}
        />
      )}
    </section>
  );
}
