import { useState } from 'react';
import type { Library } from '../../model/library';
import { Choices } from '../parts/Choices';
import { LIBRARY_FILE } from '../words/libraries';
import { reread } from '../words/spoken';

import type { LibraryDoors, SavedFile } from './library-props';

const FORMATS = reread(() => (['json', 'csv'] as const).map((id) => ({ id, name: LIBRARY_FILE.formats[id] })));

/** How a library goes into a file. */
export function FileForm({ library, onSave }: { readonly library: Library; readonly onSave: LibraryDoors['onSave'] }) {
  const [format, setFormat] = useState<'json' | 'csv'>('json');
  const [isSpreadsheet, setSpreadsheet] = useState(true);
  const [saved, setSaved] = useState<SavedFile | null>(null);
  return (
    <form
      className="file-form"
      aria-label={LIBRARY_FILE.save}
      onSubmit={async (event) => {
        event.preventDefault();
        setSaved(await onSave(library, format === 'csv' && isSpreadsheet ? 'csv-for-spreadsheets' : format));
      }}
    >
      <Choices
        label={LIBRARY_FILE.format}
        choices={FORMATS}
        chosen={format}
        onChoose={(one) => {
          setFormat(one);
          setSaved(null);
        }}
      />
      {format === 'csv' && (
        <label className="check">
          <input type="checkbox" checked={isSpreadsheet} onChange={() => setSpreadsheet(!isSpreadsheet)} />
          {LIBRARY_FILE.spreadsheet}
        </label>
      )}
      <button type="submit" className="button button-strong">
        {LIBRARY_FILE.save}
      </button>
      <p className="small quiet" role="status">
        {saved === null ? LIBRARY_FILE[`${format}Meaning`] : [LIBRARY_FILE.saved(saved.file), ...saved.lost].join(' ')}
      </p>
    </form>
  );
}
