import { useEffect, useRef, useState } from 'react';
import type { Library } from '../../model/library';
import type { LibraryDoors } from '../../ui/library/library-props';
import { useApp } from '../context';

type KeptDoors = Pick<LibraryDoors, 'libraries' | 'onPut' | 'onRemove'>;

const byName = (libraries: readonly Library[]): readonly Library[] =>
  libraries.toSorted((a, b) => a.name.localeCompare(b.name));

/**
 * The kept libraries and what changes them. One's own change is shown from the record at hand, not read back: finishes stay the same objects,
 * and what was worked out for them stays known.
 */
export function useKeptLibraries(): KeptDoors {
  const { libraries: shelf } = useApp();
  const [libraries, setLibraries] = useState<readonly Library[] | null>(null);
  /** Changes of one's own that are on their way: the news of them is no news. */
  const own = useRef(0);
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const list = await shelf.list();
      if (!isGone) setLibraries(list);
    };
    void read();
    const stop = shelf.onChange(() => {
      if (own.current === 0) void read();
    });
    return () => {
      isGone = true;
      stop();
    };
  }, [shelf]);
  const mine = async <T>(act: () => Promise<T>): Promise<T> => {
    own.current++;
    try {
      return await act();
    } finally {
      own.current--;
    }
  };
  const onPut = async (library: Library): Promise<boolean> => {
    const isKept = await mine(() => shelf.put(library));
    if (isKept) {
      setLibraries((before) => byName([...(before ?? []).filter(({ id }) => id !== library.id), library]));
    }
    return isKept;
  };
  return {
    libraries,
    onPut,
    onRemove: async (id) => {
      const library = libraries?.find((one) => one.id === id);
      const bringBack = await mine(() => shelf.remove(id));
      if (!bringBack) return null;
      setLibraries((before) => before?.filter((one) => one.id !== id) ?? null);
      return library ? () => onPut(library) : bringBack;
    },
  };
}
