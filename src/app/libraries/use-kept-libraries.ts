import { useCallback, useEffect, useState } from 'react';
import type { Library } from '../../model/library';
import type { LibraryDoors } from '../../ui/library/library-props';
import { useApp } from '../context';

type KeptDoors = Pick<LibraryDoors, 'libraries' | 'onPut' | 'onRemove'>;

/** The kept libraries and what changes them. Their finishes are the very objects offered on the page: what is known of these is known here. */
export function useKeptLibraries(): KeptDoors {
  const { libraries: shelf } = useApp();
  const [libraries, setLibraries] = useState<readonly Library[] | null>(null);
  const read = useCallback(async () => setLibraries(await shelf.list()), [shelf]);
  useEffect(() => {
    void read();
    return shelf.onChange(() => void read());
  }, [shelf, read]);
  // A change is done once it is seen; where it was refused, what is there is another than what was seen.
  const thenRead = async <T>(changing: Promise<T>): Promise<T> => {
    const changed = await changing;
    await read();
    return changed;
  };
  return {
    libraries,
    onPut: (library, instead) => thenRead(shelf.put(library, instead)),
    onRemove: (library) => thenRead(shelf.remove(library)),
  };
}
