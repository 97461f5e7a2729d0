import { useState } from 'react';
import { type Library, newLibrary } from '../../../model/library';
import { countSame, mergeFinishes, type OnSame } from '../../../model/merge-finishes';
import type { Finish } from '../../../model/project';
import { Menu } from '../../drawer/Menu';
import { IMPORT } from '../../words/import';
import { mergedWords, ON_SAME } from '../../words/libraries';
import { reread } from '../../words/spoken';
import type { ImportPlace, LibraryDoors } from '../library-props';
import { freeName } from './file-name';

interface KeepFormProps
  extends Pick<ImportPlace, 'libraries' | 'into' | 'onKeep' | 'onDone' | 'held'>,
    Pick<LibraryDoors, 'newId'> {
  readonly finishes: readonly Finish[];
  /** Proposed for a new library. */
  readonly name: string;
  readonly note: string;
  readonly isReady: boolean;
}

const SAMES = reread(() => (['skip', 'replace', 'both'] as const).map((one) => [one, ON_SAME[one]] as const));

/** Where the finishes go. Nothing is kept before its button is pressed. */
export function KeepForm(props: KeepFormProps) {
  const { libraries, into, finishes, note, isReady, newId, onKeep, onDone, held } = props;
  const [target, setTarget] = useState(into && into.finishes.length === 0 ? into.id : '');
  const [onSame, setOnSame] = useState<OnSame>('skip');
  const [name, setName] = useState(() =>
    freeName(
      props.name,
      libraries.map((library) => library.name),
    ),
  );
  const present = libraries.find(({ id }) => id === target) ?? null;
  const same = present ? countSame(present.finishes, finishes) : 0;
  const merged = mergeFinishes(present?.finishes ?? [], finishes, onSame);
  const changed = merged.added + merged.replaced;
  const canKeep = isReady && changed > 0 && (present !== null || name.trim() !== '');
  const keep = async () => {
    if (!canKeep) return;
    const library: Library = present
      ? { ...present, finishes: merged.finishes }
      : newLibrary({ id: newId(), name: name.trim(), note, finishes: merged.finishes });
    if (!(await onKeep(library, changed))) return;
    held.current = null;
    onDone(library.id);
  };
  return (
    <form
      className="import-foot"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <Menu<string>
        label={IMPORT.into}
        value={target}
        choices={[['', IMPORT.newLibrary], ...libraries.map((one) => [one.id, one.name] as const)]}
        onChoose={setTarget}
      />
      {present === null && (
        <label className="field">
          <span className="label">{IMPORT.name}</span>
          <input className="input" value={name} maxLength={80} onChange={(event) => setName(event.target.value)} />
        </label>
      )}
      {same > 0 && <Menu label={IMPORT.onSame(same)} value={onSame} choices={SAMES} onChoose={setOnSame} />}
      {same > 0 && (
        <p className="small quiet" role="status">
          {mergedWords(merged)}
        </p>
      )}
      <button type="submit" className="button button-strong" disabled={!canKeep}>
        {IMPORT.keep(changed)}
      </button>
    </form>
  );
}
