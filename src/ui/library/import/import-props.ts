import type { ImportPlace, LibraryDoors } from '../library-props';
import type { OpenImport } from './use-import';

export interface ImportPaneProps extends ImportPlace, Pick<LibraryDoors, 'paintOf' | 'newId'> {
  readonly openImport: OpenImport;
  /** A file to begin with, handed over once; null for none. */
  readonly takeFirst: () => File | null;
}
