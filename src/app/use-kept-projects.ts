import { useEffect, useState } from 'react';
import { useApp } from './context';
import type { KeptProject } from './keeping/database';

interface KeptProjects {
  /** Null until the browser has answered. */
  readonly kept: readonly KeptProject[] | null;
  /** Those that can be brought back. */
  readonly removed: readonly KeptProject[];
}

/** The projects kept in this browser, as long as somebody looks. */
export function useKeptProjects(): KeptProjects {
  const { projects } = useApp();
  const [found, setFound] = useState<KeptProjects>({ kept: null, removed: [] });
  useEffect(() => {
    let isWanted = true;
    const look = async () => {
      const kept = await projects.list();
      if (isWanted) setFound({ kept, removed: projects.removed() });
    };
    void look();
    const stop = projects.onChange(() => void look());
    return () => {
      isWanted = false;
      stop();
    };
  }, [projects]);
  return found;
}
