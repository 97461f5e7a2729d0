import { Undo2, X } from 'lucide-react';
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { LIBRARIES } from '../words/libraries';
import { type ImportPlace, type LibraryDoors, PROJECT_LIBRARY } from './library-props';
import { RangePane } from './RangePane';
import { ShelfList } from './ShelfList';
import { useEditor } from './use-editor';
import './libraries.css';

export interface LibrariesProps extends LibraryDoors {
  /** The import of a file, in place of everything else; `into`: the library it was begun from. */
  readonly importing: (given: ImportPlace) => ReactNode;
  readonly begins: View;
  readonly onClose: () => void;
}

/** What is looked at in the dialog. */
type View = 'shelf' | 'range' | 'import';

/** Where people look after their libraries: which there are, what is in one, and how a file becomes one. */
export function LibrariesDialog(props: LibrariesProps) {
  const { project } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const editor = useEditor(props);
  const [view, setView] = useState<View>(props.begins);
  const [shown, setShown] = useState<string | null>(null);
  const libraries = props.libraries ?? [];
  const open = [...libraries, project].find(({ id }) => id === shown) ?? libraries[0] ?? project;
  useEffect(() => dialog.current?.showModal(), []);
  const show = (id: string) => {
    setShown(id);
    setView('range');
  };
  const close = () => editor.leave(() => dialog.current?.close());
  return (
    <dialog
      ref={dialog}
      className="libraries"
      data-view={view}
      aria-labelledby={title}
      onClose={props.onClose}
      onKeyDown={(event) => {
        const isField = event.target instanceof Element && event.target.closest('input, textarea, select') !== null;
        if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 'z' && !event.shiftKey && !isField) {
          event.preventDefault();
          void editor.undo();
        }
        if (event.key !== 'Escape') return;
        event.preventDefault();
        close();
      }}
      onCancel={(event) => {
        event.preventDefault();
        close();
      }}
    >
      <header className="libraries-head">
        <div>
          <h2 id={title}>{LIBRARIES.title}</h2>
          <p className="small quiet libraries-intro">{LIBRARIES.intro}</p>
        </div>
        <p className="hidden-visually" role="status">
          {editor.said}
        </p>
        <div className="libraries-ways">
          {editor.undoLabel !== null && (
            <button type="button" className="button button-outlined libraries-undo" onClick={() => void editor.undo()}>
              <Undo2 className="icon" aria-hidden="true" />
              <span className="libraries-undo-words">{LIBRARIES.undoOf(editor.undoLabel)}</span>
            </button>
          )}
          <button type="button" className="button button-outlined" onClick={close}>
            <X className="icon" aria-hidden="true" />
            {LIBRARIES.close}
          </button>
        </div>
      </header>
      {editor.refused !== null && (
        <p className="libraries-refused small" role="alert">
          {editor.refused}
        </p>
      )}
      {view === 'import' ? (
        props.importing({
          libraries,
          into: open.id === PROJECT_LIBRARY ? null : open,
          onKeep: (library, added) => {
            const label = LIBRARIES.labels.keep(added, library.name);
            const before = libraries.find(({ id }) => id === library.id);
            return before ? editor.setFinishes(before, library.finishes, label) : editor.create(library, label);
          },
          held: editor.held,
          onDone: (id) => (id === undefined ? setView('range') : show(id)),
        })
      ) : (
        <div className="libraries-body">
          <ShelfList
            libraries={props.libraries}
            project={project}
            shown={open.id}
            editor={editor}
            newId={props.newId}
            onShow={(id) => editor.leave(() => show(id))}
            onImport={() => editor.leave(() => setView('import'))}
          />
          <RangePane
            key={open.id}
            library={open}
            others={[...libraries, project].filter(({ id }) => id !== open.id)}
            editor={editor}
            paintOf={props.paintOf}
            onSave={props.onSave}
            onImport={() => setView('import')}
            onBack={() => setView('shelf')}
          />
        </div>
      )}
    </dialog>
  );
}
