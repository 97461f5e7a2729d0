import { FilePlus2, Upload } from 'lucide-react';
import { useState } from 'react';
import { type Library, newLibrary } from '../../model/library';
import { finishCount, LIBRARIES } from '../words/libraries';
import { NameForm } from './NameForm';
import type { LibraryEditor } from './use-editor';

interface ShelfListProps {
  /** Null while they are looked up. */
  readonly libraries: readonly Library[] | null;
  readonly project: Library;
  readonly shown: string;
  readonly editor: LibraryEditor;
  readonly newId: () => string;
  readonly onShow: (id: string) => void;
  readonly onImport: () => void;
}

/** The libraries there are, the project's own finishes among them. */
export function ShelfList({ libraries, project, shown, editor, newId, onShow, onImport }: ShelfListProps) {
  const [isNaming, setNaming] = useState(false);
  const row = (library: Library) => (
    <li key={library.id}>
      <button
        type="button"
        className="shelf-library ring-inside"
        aria-current={library.id === shown}
        onClick={() => onShow(library.id)}
      >
        <span className="shelf-name">{library.name}</span>
        <span className="small quiet">{finishCount(library.finishes.length)}</span>
        {library.note && <span className="small quiet shelf-note">{library.note}</span>}
      </button>
    </li>
  );
  return (
    <nav className="shelf" aria-label={LIBRARIES.shelf}>
      <ul className="shelf-list">
        {row(project)}
        {libraries?.map(row)}
      </ul>
      {libraries === null && (
        <p className="small quiet shelf-told" role="status">
          {LIBRARIES.waiting}
        </p>
      )}
      {libraries?.length === 0 && <p className="small quiet shelf-told">{LIBRARIES.none}</p>}
      {editor.removed !== null && (
        <div className="shelf-told small">
          <p>{LIBRARIES.removed(editor.removed)}</p>
          <button type="button" className="button button-outlined" onClick={() => void editor.undo()}>
            {LIBRARIES.bringBack}
          </button>
        </div>
      )}
      <div className="shelf-ways">
        <button type="button" className="button button-strong" onClick={onImport}>
          <Upload className="icon" aria-hidden="true" />
          {LIBRARIES.importFile}
        </button>
        {isNaming ? (
          <NameForm
            name={LIBRARIES.newName}
            label={LIBRARIES.newEmpty}
            onCancel={() => setNaming(false)}
            onName={async (name, note) => {
              const library = newLibrary({ id: newId(), name, note, finishes: [] });
              setNaming(false);
              if (await editor.create(library, LIBRARIES.labels.create(name))) onShow(library.id);
            }}
          />
        ) : (
          <button type="button" className="button button-outlined" onClick={() => setNaming(true)}>
            <FilePlus2 className="icon" aria-hidden="true" />
            {LIBRARIES.newEmpty}
          </button>
        )}
      </div>
    </nav>
  );
}
