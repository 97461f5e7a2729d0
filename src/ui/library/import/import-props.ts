import type { ImportPlace, LibraryDoors } from '../library-props';
import type { OpenImport } from './use-import';

export interface ImportPaneProps extends ImportPlace, Pick<LibraryDoors, 'paintOf' | 'newId'> {
  readonly openImport: OpenImport;
}
