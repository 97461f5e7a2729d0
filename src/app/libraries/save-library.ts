import { libraryText } from '../../io/library-file';
import { writeCsv } from '../../io/sheet/write-csv';
import type { Library } from '../../model/library';
import type { LibraryFormat } from '../../ui/library/library-props';
import { fileNameOf } from '../file-name';
import { saveBlob } from '../save-blob';

/** Hands a library to the browser as a file; its name, and what the file cannot hold. */
export function saveLibrary(
  library: Library,
  format: LibraryFormat,
): { readonly file: string; readonly lost: readonly string[] } {
  const name = fileNameOf({ id: 'library', name: library.name });
  if (format === 'json') {
    const file = `${name}.library.json`;
    saveBlob(new Blob([libraryText(library)], { type: 'application/json' }), file);
    return { file, lost: [] };
  }
  const { text, notices } = writeCsv(library.finishes, { mark: format === 'csv-for-spreadsheets' });
  const file = `${name}.csv`;
  saveBlob(new Blob([text], { type: 'text/csv;charset=utf-8' }), file);
  return { file, lost: notices.map((notice) => `${notice.text} ${notice.remedy}`) };
}
